// SPDX-License-Identifier: Apache-2.0
// What was heard of the devices, kept with the stored views.
#include <charconv>

#include "core/book/book_body.h"

namespace snugline::book {

std::string devicesText(const season::Views& views) {
  std::string text;
  for (const auto& [device, heard] : views.devices)
    text += device + ' ' + std::to_string(heard.latest.ms) + ' ' + std::to_string(heard.latest.offsetMinutes) + ' ' + heard.who + '\n';
  return text;
}

bool readDevices(std::string_view text, season::Views& views) {
  const auto word = [&text](char end) {
    const std::size_t length = text.find(end);
    const std::string_view found = text.substr(0, length);
    text.remove_prefix(length == std::string_view::npos ? text.size() : length + 1);
    return found;
  };
  const auto number = [&](auto& into) {
    const std::string_view digits = word(' ');
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), into);
    return error == std::errc() && end == digits.data() + digits.size();
  };
  while (!text.empty()) {
    const std::string device(word(' '));
    season::DeviceRecord heard;
    if (device.empty() || !number(heard.latest.ms) || !number(heard.latest.offsetMinutes)) return false;
    heard.who = word('\n');
    views.devices[device] = std::move(heard);
  }
  return true;
}

}  // namespace snugline::book
