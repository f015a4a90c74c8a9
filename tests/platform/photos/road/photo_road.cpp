// SPDX-License-Identifier: Apache-2.0
// photo_road FOLDER FILE: the picture in FILE made plain and put into the photo store FOLDER, as the app does it. Prints the stored file;
// exit 2 and "code place detail" where it is refused.
#include <cstdio>

#include <QGuiApplication>

#include "core/book/photo_store.h"
#include "platform/photos/photo_maker.h"

int main(int argc, char** argv) {
  if (argc != 3) return 1;
  QGuiApplication application(argc, argv);
  const auto refused = [](const snugline::Error& error) {
    std::printf("%d %s %s\n", static_cast<int>(error.code), error.place.c_str(), error.detail.c_str());
    return 2;
  };
  const auto jpeg = snugline::photos::PlainPhotoMaker().fromFile(argv[2]);
  if (!jpeg) return refused(jpeg.error());
  const snugline::book::PhotoStore store(argv[1]);
  const auto kept = store.put(*jpeg);
  if (!kept) return refused(kept.error());
  std::printf("%s\n", store.pathOf(kept->hash).c_str());
  return 0;
}
