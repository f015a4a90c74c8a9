// SPDX-License-Identifier: Apache-2.0
// Purpose: the roads to a picture of gear: a file that is chosen, or the frame that the camera sees; and back to pixels to show it. What
// comes in leaves as a plain JPEG: upright, scaled, with nothing of what the source knew (place, time, camera, words). No rules behind it.
// Errors: cannotRead (place: the file), tooLong (of the file: "length, limit"), outOfRange ("widthxheight, 1, limit"), notAllowed with
// detail one of the words below. Thread: PhotoMaker from any one thread at a time; PhotoCamera as TagCamera (tag_port.h).
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "core/ports/tag_port.h"
#include "core/quantity/result.h"

namespace snugline::ports {

inline constexpr std::string_view kNotAPicture = "not-a-picture";  // nothing that this device reads as one
inline constexpr std::string_view kPictureDamaged = "picture-damaged";
inline constexpr std::string_view kNothingSeen = "nothing-seen";  // the camera has sent no picture yet

// Pixels, row by row without gaps, red, green, blue: width * height * 3 bytes.
struct ColourPicture {
  int width = 0, height = 0;
  std::vector<std::uint8_t> rgb;
};

class PhotoMaker {
 public:
  virtual ~PhotoMaker() = default;
  // The bytes of a plain JPEG. name stands in the errors.
  [[nodiscard]] virtual Result<std::string> fromFile(const std::string& path) = 0;
  [[nodiscard]] virtual Result<std::string> fromPicture(const ColourPicture& picture) = 0;
};

struct PhotoListener {
  std::function<void(CameraState)> onState;
  std::function<void(const ColourPicture&)> onPicture;  // what it sees, small, some ten times a second
};
class PhotoCamera {
 public:
  virtual ~PhotoCamera() = default;
  virtual void listen(PhotoListener listener) = 0;
  [[nodiscard]] virtual Result<void> start() = 0;
  virtual void stop() = 0;
  // The frame seen last, as large as it came.
  [[nodiscard]] virtual Result<ColourPicture> take() = 0;
};

}  // namespace snugline::ports
