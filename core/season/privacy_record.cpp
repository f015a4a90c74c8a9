// SPDX-License-Identifier: Apache-2.0
#include "core/season/privacy_record.h"

namespace snugline::season {

std::string_view code(Signer signer) {
  switch (signer) {
    case Signer::athlete:
      return "athlete";
    case Signer::guardian:
      return "guardian";
  }
  return {};
}

std::optional<Signer> signerFromCode(std::string_view word) {
  for (const Signer signer : {Signer::athlete, Signer::guardian}) {
    if (code(signer) == word) return signer;
  }
  return std::nullopt;
}

}  // namespace snugline::season
