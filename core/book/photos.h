// SPDX-License-Identifier: Apache-2.0
// Purpose: photos of gear as acts on a Book: kept, shown, taken back. The file is on the disk before its fact is appended; it is deleted
// once no uncorrected fact names it (BOOK_FORMAT.md, Photos). Errors: those of PhotoStore, notFound (unit, hold or photo), outOfRange
// (words), notAllowed with a rule below. Thread: the Book's.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/book/acts.h"
#include "core/book/book.h"
#include "core/book/photo_store.h"

namespace snugline::book {

namespace rule {
inline constexpr std::string_view kPhotoKept = "photo-kept";    // this very picture stands with this helmet already
inline constexpr std::string_view kPhotoOnHold = "photo-held";  // a legal hold stands: nothing is deleted
}  // namespace rule

struct NewPhoto {
  std::string unit;
  std::optional<gear::Point> of{};  // nothing: of the helmet
  std::string hold{};               // fact of an open hold of the unit, or empty
  std::string what{};               // 0..kWordsLimit characters
};
// Where a hold for a point is named and no point is, the photo is of that point. A failure leaves no new file.
[[nodiscard]] Result<Appended> keepPhoto(Book& book, const NewPhoto& photo, std::string_view jpeg);
// Takes the fact back and deletes the file, unless another photo is the same picture. Cannot be undone. A file that could not be deleted
// is deleted when the Book is next opened; ask the store whether it is gone.
[[nodiscard]] Result<Appended> removePhoto(Book& book, const std::string& unit, const std::string& fact);
// Whether removePhoto would be refused, for the screen to say beforehand.
[[nodiscard]] Result<void> mayRemovePhoto(const season::Views& views, const std::string& unit, const std::string& fact);

}  // namespace snugline::book
