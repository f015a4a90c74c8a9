// SPDX-License-Identifier: Apache-2.0
#include "platform/printing/folder_outbox.h"

#include <QDesktopServices>
#include <QDir>
#include <QFileInfo>
#include <QSaveFile>
#include <QUrl>

#include "platform/printing/typesetter.h"

namespace snugline::platform {

namespace {
constexpr int kNamesMost = 1000;
}

Result<QString> FolderOutbox::freeName(const std::string& name) const {
  const QDir folder(m_folder);
  if (m_folder.isEmpty() || !folder.mkpath(QStringLiteral("."))) return fail(ErrorCode::cannotWrite, m_folder.toStdString());
  const QFileInfo wanted(QString::fromStdString(name));
  for (int i = 1; i < kNamesMost; ++i) {
    const QString number = i == 1 ? QString() : QStringLiteral("-%1").arg(i);
    const QString path = folder.filePath(wanted.completeBaseName() + number + QLatin1Char('.') + wanted.suffix());
    if (!QFileInfo::exists(path)) return path;
  }
  return fail(ErrorCode::fileExists, m_folder.toStdString());
}

Result<std::string> FolderOutbox::keep(const std::string& name, const std::string& bytes) {
  const auto path = freeName(name);
  if (!path) return tl::unexpected<Error>(path.error());
  QSaveFile file(*path);
  // Readable by its user alone from the first byte.
  const bool isOpen = file.open(QIODevice::WriteOnly) && file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner);
  if (!isOpen || file.write(bytes.data(), static_cast<qint64>(bytes.size())) != static_cast<qint64>(bytes.size()) || !file.commit())
    return fail(ErrorCode::cannotWrite, path->toStdString(), file.errorString().toStdString());
  return path->toStdString();
}

bool FolderOutbox::openBySystem(const QString& path) { return QDesktopServices::openUrl(QUrl::fromLocalFile(path)); }

Result<std::string> FolderOutbox::print(const std::string& name, const ports::Paper& paper) { return keep(name, setPaper(paper)); }

}  // namespace snugline::platform
