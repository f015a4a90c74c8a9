// SPDX-License-Identifier: Apache-2.0
#include "core/book/backup_file.h"

#include <fcntl.h>
#include <sodium.h>
#include <sys/stat.h>
#include <unistd.h>
#include <zstd.h>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <unordered_map>

#include "core/book/book_body.h"

namespace snugline::book {

namespace {

constexpr std::string_view kMagic = "SNUGBAK1";
constexpr std::size_t kHashBytes = 32;
constexpr std::size_t kHeadBytes = kDeviceLetters + 32 + 8 + 8 + 32 + 1 + 64 + 4 + 4;
constexpr std::size_t kLinesMost = kSegmentFacts * (kFactLimitBytes + 1);
constexpr int kLevel = 3;  // measured: higher levels gain a few per cent at several times the cost

Error writeError(const std::string& path, int reason) {
  const ErrorCode code = reason == ENOSPC || reason == EDQUOT  ? ErrorCode::diskFull
                         : reason == EROFS || reason == EACCES ? ErrorCode::readOnly
                                                               : ErrorCode::cannotWrite;
  return {code, path, std::strerror(reason)};
}

template <typename T>
void putNumber(std::string& out, T value) {
  for (std::size_t i = 0; i < sizeof(T); ++i) out += static_cast<char>((static_cast<std::uint64_t>(value) >> (8 * i)) & 0xff);
}

struct Cursor {
  std::string_view rest;
  [[nodiscard]] std::string_view take(std::size_t bytes) {
    const std::string_view taken = rest.substr(0, bytes);
    rest.remove_prefix(taken.size());
    return taken;
  }
  template <typename T>
  [[nodiscard]] T number() {
    const std::string_view bytes = take(sizeof(T));
    std::uint64_t value = 0;
    for (std::size_t i = 0; i < bytes.size(); ++i) value |= static_cast<std::uint64_t>(static_cast<unsigned char>(bytes[i])) << (8 * i);
    return static_cast<T>(value);
  }
};

Result<std::string> wholeFile(const std::string& path) {
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (file < 0) return fail(ErrorCode::cannotRead, path, std::strerror(errno));
  struct stat status {};
  std::string bytes;
  bool isRead = ::fstat(file, &status) == 0 && S_ISREG(status.st_mode);
  if (isRead) bytes.resize(static_cast<std::size_t>(status.st_size));
  std::size_t done = 0;
  while (isRead && done < bytes.size()) {
    const ssize_t got = ::read(file, bytes.data() + done, bytes.size() - done);
    if (got < 0 && errno == EINTR) continue;
    isRead = got > 0;
    if (got > 0) done += static_cast<std::size_t>(got);
  }
  ::close(file);
  if (!isRead) return fail(ErrorCode::cannotRead, path, "reading stopped");
  return bytes;
}

}  // namespace

struct BackupWriter::Hash {
  crypto_generichash_state state{};
};

Result<BackupWriter> BackupWriter::create(const std::string& path, std::uint32_t segments) {
  struct stat status {};
  if (::lstat(path.c_str(), &status) == 0) return fail(ErrorCode::fileExists, path);
  BackupWriter writer;
  writer.m_path = path;
  writer.m_draft = temporaryName(path);
  writer.m_hash = std::make_unique<Hash>();
  crypto_generichash_init(&writer.m_hash->state, nullptr, 0, kHashBytes);
  writer.m_file = ::open(writer.m_draft.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0644);
  if (writer.m_file < 0) return tl::unexpected<Error>(writeError(path, errno));
  std::string head(kMagic);
  putNumber(head, segments);
  if (auto done = writer.write(head); !done) return tl::unexpected<Error>(done.error());
  return writer;
}

BackupWriter::BackupWriter(BackupWriter&& other) noexcept
    : m_path(std::move(other.m_path)), m_draft(std::move(other.m_draft)), m_file(other.m_file), m_hash(std::move(other.m_hash)) {
  other.m_file = -1;
}

BackupWriter::~BackupWriter() {
  if (m_file < 0) return;
  ::close(m_file);
  ::unlink(m_draft.c_str());
}

Result<void> BackupWriter::write(std::string_view bytes) {
  crypto_generichash_update(&m_hash->state, reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
  while (!bytes.empty()) {
    const ssize_t done = ::write(m_file, bytes.data(), bytes.size());
    if (done < 0 && errno == EINTR) continue;
    if (done <= 0) return tl::unexpected<Error>(writeError(m_path, done < 0 ? errno : EIO));
    bytes.remove_prefix(static_cast<std::size_t>(done));
  }
  return {};
}

Result<void> BackupWriter::add(const BackupSegment& segment) {
  std::string packed(ZSTD_compressBound(segment.lines.size()), '\0');
  const std::size_t size = ZSTD_compress(packed.data(), packed.size(), segment.lines.data(), segment.lines.size(), kLevel);
  if (ZSTD_isError(size) != 0) return fail(ErrorCode::internal, m_path, ZSTD_getErrorName(size));
  packed.resize(size);
  std::string head = segment.device;
  head.resize(kDeviceLetters, '\0');
  head += bytesOf(segment.key);
  putNumber(head, segment.first);
  putNumber(head, segment.last);
  head += bytesOf(segment.chain);
  head += segment.isSigned ? '\1' : '\0';
  head += bytesOf(segment.signature);
  putNumber(head, static_cast<std::uint32_t>(segment.lines.size()));
  putNumber(head, static_cast<std::uint32_t>(packed.size()));
  if (auto done = write(head); !done) return done;
  return write(packed);
}

Result<void> BackupWriter::finish() {
  Chain hash{};
  crypto_generichash_final(&m_hash->state, hash.data(), hash.size());
  std::string_view bytes = bytesOf(hash);
  const ssize_t done = ::write(m_file, bytes.data(), bytes.size());
  if (done != static_cast<ssize_t>(bytes.size())) return tl::unexpected<Error>(writeError(m_path, done < 0 ? errno : ENOSPC));
  if (::fsync(m_file) != 0) return tl::unexpected<Error>(writeError(m_path, errno));
  if (auto named = nameFile(m_draft, m_path); !named) return named;
  ::close(m_file);
  m_file = -1;
  return {};
}

Result<void> readBackup(const std::string& path, const std::function<Result<void>(const BackupSegment&)>& visit) {
  const auto bytes = wholeFile(path);
  if (!bytes) return tl::unexpected<Error>(bytes.error());
  const std::string_view all = *bytes;
  if (all.substr(0, kMagic.size()) != kMagic) return fail(ErrorCode::notABook, path);
  if (all.size() < kMagic.size() + 4 + kHashBytes) return fail(ErrorCode::damagedBook, path, "cut short");
  Chain hash{};
  crypto_generichash(hash.data(), hash.size(), reinterpret_cast<const unsigned char*>(all.data()), all.size() - kHashBytes, nullptr, 0);
  if (bytesOf(hash) != all.substr(all.size() - kHashBytes)) return fail(ErrorCode::damagedBook, path, "cut short or altered");

  Cursor in{all.substr(kMagic.size(), all.size() - kMagic.size() - kHashBytes)};
  const auto count = in.number<std::uint32_t>();
  struct Held {
    std::uint64_t last = 0;
    Chain chain{};
  };
  std::unordered_map<std::string, Held> held;
  for (std::uint32_t i = 0; i < count; ++i) {
    if (in.rest.size() < kHeadBytes) return fail(ErrorCode::damagedBook, path, "segment " + std::to_string(i));
    BackupSegment segment;
    segment.device = std::string(in.take(kDeviceLetters));
    const bool isKeyRead = fromBytes(in.take(segment.key.size()), segment.key);
    segment.first = in.number<std::uint64_t>();
    segment.last = in.number<std::uint64_t>();
    const bool isChainRead = fromBytes(in.take(segment.chain.size()), segment.chain);
    segment.isSigned = in.take(1) == std::string_view("\1", 1);
    const bool isSignatureRead = fromBytes(in.take(segment.signature.size()), segment.signature);
    const auto length = in.number<std::uint32_t>(), packed = in.number<std::uint32_t>();
    const std::string name = segment.device + ':' + std::to_string(segment.last);
    if (!isKeyRead || !isChainRead || !isSignatureRead || length > kLinesMost || packed > in.rest.size()) {
      return fail(ErrorCode::damagedBook, path, name);
    }
    segment.lines.resize(length);
    const std::string_view source = in.take(packed);
    const std::size_t size = ZSTD_decompress(segment.lines.data(), segment.lines.size(), source.data(), source.size());
    if (ZSTD_isError(size) != 0 || size != length) return fail(ErrorCode::damagedBook, path, name);

    auto [device, isNew] = held.try_emplace(segment.device);
    if (isNew) device->second.chain = chainStart(segment.device);
    const auto lines = static_cast<std::uint64_t>(std::count(segment.lines.begin(), segment.lines.end(), '\n'));
    const bool isInPlace = segment.first == device->second.last + 1 && segment.last >= segment.first &&
                           lines == segment.last - segment.first + 1 && (segment.lines.empty() || segment.lines.back() == '\n');
    if (!isInPlace) return fail(ErrorCode::brokenChain, name, path);
    std::string_view rest = segment.lines;
    while (!rest.empty()) {
      const std::size_t end = rest.find('\n');
      device->second.chain = chainStep(device->second.chain, rest.substr(0, end));
      rest.remove_prefix(end + 1);
    }
    device->second.last = segment.last;
    if (device->second.chain != segment.chain) return fail(ErrorCode::brokenChain, name, path);
    const bool isOwnKey = deviceOf(segment.key) == segment.device;
    if (segment.isSigned &&
        (!isOwnKey || !isSignedBy(segment.key, segment.signature, segment.device, segment.first, segment.last, segment.chain))) {
      return fail(ErrorCode::badSignature, name, path);
    }
    if (auto done = visit(segment); !done) return done;
  }
  if (!in.rest.empty()) return fail(ErrorCode::damagedBook, path, "more than it says");
  return {};
}

}  // namespace snugline::book
