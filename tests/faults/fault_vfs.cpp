// SPDX-License-Identifier: Apache-2.0
#include "fault_vfs.h"

#include <stdexcept>
#include <utility>

namespace snugline::test {

namespace {

constexpr int kFrameHeaderBytes = 24;  // SQLite file format, 4.1

}  // namespace

// SQLite gives raw memory for it; the real file lies behind it.
struct FaultFile {
  sqlite3_file base;
  FaultVfs* vfs;
  bool isWal;

  static FaultFile* of(sqlite3_file* file) { return reinterpret_cast<FaultFile*>(file); }
  [[nodiscard]] sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }

  static int close(sqlite3_file* f) { return of(f)->real()->pMethods->xClose(of(f)->real()); }
  static int read(sqlite3_file* f, void* to, int bytes, sqlite3_int64 at) {
    return of(f)->real()->pMethods->xRead(of(f)->real(), to, bytes, at);
  }
  static int write(sqlite3_file* f, const void* from, int bytes, sqlite3_int64 at) {
    FaultFile* file = of(f);
    if (const int code = file->vfs->outcomeOf(FaultVfs::Deed::write); code != SQLITE_OK) return code;
    FaultVfs::Counts& counts = file->vfs->m_counts;
    if (file->isWal) {
      counts.walPages += bytes == kFrameHeaderBytes ? 1 : 0;
    } else {
      ++counts.filePages;
    }
    return file->real()->pMethods->xWrite(file->real(), from, bytes, at);
  }
  static int truncate(sqlite3_file* f, sqlite3_int64 size) { return of(f)->real()->pMethods->xTruncate(of(f)->real(), size); }
  static int sync(sqlite3_file* f, int) {
    FaultFile* file = of(f);
    if (const int code = file->vfs->outcomeOf(FaultVfs::Deed::sync); code != SQLITE_OK) return code;
    (file->isWal ? file->vfs->m_counts.walSyncs : file->vfs->m_counts.fileSyncs) += 1;
    return SQLITE_OK;  // counted, not waited for: no test here cuts the power
  }
  static int size(sqlite3_file* f, sqlite3_int64* bytes) { return of(f)->real()->pMethods->xFileSize(of(f)->real(), bytes); }
  static int lock(sqlite3_file* f, int level) { return of(f)->real()->pMethods->xLock(of(f)->real(), level); }
  static int unlock(sqlite3_file* f, int level) { return of(f)->real()->pMethods->xUnlock(of(f)->real(), level); }
  static int reserved(sqlite3_file* f, int* is) { return of(f)->real()->pMethods->xCheckReservedLock(of(f)->real(), is); }
  static int control(sqlite3_file* f, int op, void* arg) { return of(f)->real()->pMethods->xFileControl(of(f)->real(), op, arg); }
  static int sector(sqlite3_file* f) { return of(f)->real()->pMethods->xSectorSize(of(f)->real()); }
  static int traits(sqlite3_file* f) { return of(f)->real()->pMethods->xDeviceCharacteristics(of(f)->real()); }

  static int open(sqlite3_vfs* v, const char* name, sqlite3_file* f, int flags, int* outFlags) {
    static const sqlite3_io_methods kMethods = [] {
      sqlite3_io_methods methods{};
      methods.iVersion = 1;
      methods.xClose = close;
      methods.xRead = read;
      methods.xWrite = write;
      methods.xTruncate = truncate;
      methods.xSync = sync;
      methods.xFileSize = size;
      methods.xLock = lock;
      methods.xUnlock = unlock;
      methods.xCheckReservedLock = reserved;
      methods.xFileControl = control;
      methods.xSectorSize = sector;
      methods.xDeviceCharacteristics = traits;
      return methods;
    }();
    FaultFile* file = of(f);
    file->vfs = static_cast<FaultVfs*>(v->pAppData);
    file->isWal = (flags & SQLITE_OPEN_WAL) != 0;
    file->base.pMethods = nullptr;
    if (file->isWal && file->vfs->m_isWalRefused) return SQLITE_CANTOPEN;
    const int code = file->vfs->m_real->xOpen(file->vfs->m_real, name, file->real(), flags, outFlags);
    if (code == SQLITE_OK) file->base.pMethods = &kMethods;
    return code;
  }
  static FaultVfs* vfsOf(sqlite3_vfs* v) { return static_cast<FaultVfs*>(v->pAppData); }
  static int remove(sqlite3_vfs* v, const char* name, int dir) { return vfsOf(v)->m_real->xDelete(vfsOf(v)->m_real, name, dir); }
  static int access(sqlite3_vfs* v, const char* name, int flags, int* is) {
    return vfsOf(v)->m_real->xAccess(vfsOf(v)->m_real, name, flags, is);
  }
  static int full(sqlite3_vfs* v, const char* name, int size, char* out) {
    return vfsOf(v)->m_real->xFullPathname(vfsOf(v)->m_real, name, size, out);
  }
  static int random(sqlite3_vfs* v, int bytes, char* out) { return vfsOf(v)->m_real->xRandomness(vfsOf(v)->m_real, bytes, out); }
  static int pause(sqlite3_vfs* v, int us) { return vfsOf(v)->m_real->xSleep(vfsOf(v)->m_real, us); }
  static int time(sqlite3_vfs* v, double* now) { return vfsOf(v)->m_real->xCurrentTime(vfsOf(v)->m_real, now); }
  static int lastError(sqlite3_vfs*, int, char*) { return 0; }

  static void fill(FaultVfs& to) {
    to.m_vfs.iVersion = 1;
    to.m_vfs.szOsFile = static_cast<int>(sizeof(FaultFile)) + to.m_real->szOsFile;
    to.m_vfs.mxPathname = to.m_real->mxPathname;
    to.m_vfs.zName = to.m_name.c_str();
    to.m_vfs.pAppData = &to;
    to.m_vfs.xOpen = open;
    to.m_vfs.xDelete = remove;
    to.m_vfs.xAccess = access;
    to.m_vfs.xFullPathname = full;
    to.m_vfs.xRandomness = random;
    to.m_vfs.xSleep = pause;
    to.m_vfs.xCurrentTime = time;
    to.m_vfs.xGetLastError = lastError;
  }
};

FaultVfs::FaultVfs(std::string name) : m_name(std::move(name)), m_real(sqlite3_vfs_find(nullptr)) {
  FaultFile::fill(*this);
  if (sqlite3_vfs_register(&m_vfs, 0) != SQLITE_OK) throw std::runtime_error("no VFS");
}

FaultVfs::~FaultVfs() { sqlite3_vfs_unregister(&m_vfs); }

void FaultVfs::failAt(Deed deed, int k, int code, bool isForGood) {
  m_plan = Plan{deed, k, code, isForGood};
  m_hasFailed = false;
}

int FaultVfs::outcomeOf(Deed deed) {
  if (!m_plan) return SQLITE_OK;
  if (m_plan->left <= 0) return m_plan->isForGood ? m_plan->code : SQLITE_OK;
  if (m_plan->deed != deed || --m_plan->left > 0) return SQLITE_OK;
  m_hasFailed = true;
  return m_plan->code;
}

}  // namespace snugline::test
