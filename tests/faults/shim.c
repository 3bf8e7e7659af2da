/* Counts the calls by which a process changes files below one folder, and fails the n-th of a kind.
 *
 * Loaded before the C library (LD_PRELOAD); armed from Python by ctypes. Calls on other files are let through
 * uncounted, so that the counts do not depend on what a library reads on the side.
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <stdarg.h>
#include <string.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <sys/types.h>
#include <sys/uio.h>
#include <unistd.h>

enum kind { OPEN, READ, WRITE, SYNC, TRUNCATE, RENAME, LINK, UNLINK, MKDIR, CHMOD, CLOSE, MMAP, KINDS };
/* What becomes of the call: an error; an error, and so for every later one of the kind; the process ended before
 * it, after it, or with half of it written; half written, and then no room any more. */
enum how { ONCE, FROM_THEN_ON, END_BEFORE, END_AFTER, END_HALF, HALF_THEN_FULL };

#define FILES 65536
static char watched[FILES];
static char below[4096];
static long counts[KINDS];
static int armed_kind = -1, armed_how, armed_errno;
static long armed_at;

void faults_watch(const char *folder) { strncpy(below, folder, sizeof below - 1); }

void faults_arm(int kind, long at, int how, int number) {
    memset(counts, 0, sizeof counts);
    armed_kind = kind, armed_at = at, armed_how = how, armed_errno = number;
}

long faults_count(int kind) { return counts[kind]; }

static int is_below(int folder, const char *path) {
    if (!below[0] || !path) return 0;
    if (path[0] != '/') return folder >= 0 && folder < FILES && watched[folder];
    return strncmp(path, below, strlen(below)) == 0;
}

static int is_watched(int file) { return file >= 0 && file < FILES && watched[file]; }

/* Whether this call is the one: 0, or 1 + how. */
static int comes(enum kind kind) {
    long at = __sync_add_and_fetch(&counts[kind], 1);
    if ((int)kind != armed_kind || at < armed_at) return 0;
    if (at > armed_at) {
        if (armed_how == HALF_THEN_FULL) errno = ENOSPC;
        return armed_how == FROM_THEN_ON || armed_how == HALF_THEN_FULL ? 1 + FROM_THEN_ON : 0;
    }
    return 1 + armed_how;
}

static int wrong(int found) {
    if (found == 1 + FROM_THEN_ON && armed_how == HALF_THEN_FULL) errno = ENOSPC;
    else errno = armed_errno;
    return -1;
}

#define REAL(name)                                                                   \
    static __typeof__(name) *real;                                                   \
    if (!real) real = (__typeof__(name) *)dlsym(RTLD_NEXT, #name)

/* A call that either is done or is not. */
#define WHOLE(kind, is_ours, call)                                                   \
    do {                                                                             \
        int found = (is_ours) ? comes(kind) : 0;                                     \
        if (found == 1 + END_BEFORE || found == 1 + END_HALF) _exit(9);              \
        if (found && found != 1 + END_AFTER) return wrong(found);                    \
        int done = (call);                                                           \
        if (found == 1 + END_AFTER) _exit(9);                                        \
        return done;                                                                 \
    } while (0)

static int opened(int file, int is_ours) {
    if (file >= 0 && file < FILES) watched[file] = (char)is_ours;
    return file;
}

#define OPENS(name, ...)                                                             \
    mode_t mode = 0;                                                                 \
    if (flags & (O_CREAT | O_TMPFILE)) {                                             \
        va_list rest;                                                                \
        va_start(rest, flags);                                                       \
        mode = va_arg(rest, mode_t);                                                 \
        va_end(rest);                                                                \
    }                                                                                \
    REAL(name);                                                                      \
    int ours = is_below(folder, path);                                               \
    WHOLE(OPEN, ours, opened(real(__VA_ARGS__), ours))

int open(const char *path, int flags, ...) { const int folder = -1; OPENS(open, path, flags, mode); }
int open64(const char *path, int flags, ...) { const int folder = -1; OPENS(open64, path, flags, mode); }
int openat(int folder, const char *path, int flags, ...) { OPENS(openat, folder, path, flags, mode); }
int openat64(int folder, const char *path, int flags, ...) { OPENS(openat64, folder, path, flags, mode); }
int creat(const char *path, mode_t mode) {
    REAL(creat);
    int ours = is_below(-1, path);
    WHOLE(OPEN, ours, opened(real(path, mode), ours));
}

int close(int file) {
    REAL(close);
    int found = is_watched(file) ? comes(CLOSE) : 0;
    if (found == 1 + END_BEFORE || found == 1 + END_HALF) _exit(9);
    if (file >= 0 && file < FILES) watched[file] = 0;
    int done = real(file); /* as Linux does: the file is closed, also where an error is told */
    if (found == 1 + END_AFTER) _exit(9);
    return found ? wrong(found) : done;
}

/* Half of what was to be written or read, and the rest of the plan. */
#define PARTLY(kind, is_ours, all, half)                                             \
    do {                                                                             \
        int found = (is_ours) ? comes(kind) : 0;                                     \
        if (found == 1 + END_BEFORE) _exit(9);                                       \
        if (found == 1 + END_HALF || found == 1 + HALF_THEN_FULL) {                  \
            ssize_t some = (half);                                                   \
            if (found == 1 + END_HALF) _exit(9);                                     \
            return some;                                                             \
        }                                                                            \
        if (found && found != 1 + END_AFTER) return wrong(found);                    \
        ssize_t done = (all);                                                        \
        if (found == 1 + END_AFTER) _exit(9);                                        \
        return done;                                                                 \
    } while (0)

ssize_t write(int file, const void *bytes, size_t size) {
    REAL(write);
    PARTLY(WRITE, is_watched(file), real(file, bytes, size), real(file, bytes, (size + 1) / 2));
}
ssize_t pwrite(int file, const void *bytes, size_t size, off_t at) {
    REAL(pwrite);
    PARTLY(WRITE, is_watched(file), real(file, bytes, size, at), real(file, bytes, (size + 1) / 2, at));
}
ssize_t pwrite64(int file, const void *bytes, size_t size, off64_t at) {
    REAL(pwrite64);
    PARTLY(WRITE, is_watched(file), real(file, bytes, size, at), real(file, bytes, (size + 1) / 2, at));
}
ssize_t writev(int file, const struct iovec *parts, int count) {
    REAL(writev);
    PARTLY(WRITE, is_watched(file), real(file, parts, count), real(file, parts, (count + 1) / 2));
}
ssize_t read(int file, void *bytes, size_t size) {
    REAL(read);
    PARTLY(READ, is_watched(file), real(file, bytes, size), real(file, bytes, (size + 1) / 2));
}
ssize_t pread(int file, void *bytes, size_t size, off_t at) {
    REAL(pread);
    PARTLY(READ, is_watched(file), real(file, bytes, size, at), real(file, bytes, (size + 1) / 2, at));
}
ssize_t pread64(int file, void *bytes, size_t size, off64_t at) {
    REAL(pread64);
    PARTLY(READ, is_watched(file), real(file, bytes, size, at), real(file, bytes, (size + 1) / 2, at));
}

int fsync(int file) { REAL(fsync); WHOLE(SYNC, is_watched(file), real(file)); }
int fdatasync(int file) { REAL(fdatasync); WHOLE(SYNC, is_watched(file), real(file)); }
int ftruncate(int file, off_t size) { REAL(ftruncate); WHOLE(TRUNCATE, is_watched(file), real(file, size)); }
int ftruncate64(int file, off64_t size) { REAL(ftruncate64); WHOLE(TRUNCATE, is_watched(file), real(file, size)); }

int rename(const char *from, const char *to) { REAL(rename); WHOLE(RENAME, is_below(-1, to), real(from, to)); }
int renameat(int one, const char *from, int other, const char *to) {
    REAL(renameat);
    WHOLE(RENAME, is_below(other, to), real(one, from, other, to));
}
int renameat2(int one, const char *from, int other, const char *to, unsigned int flags) {
    REAL(renameat2);
    WHOLE(RENAME, is_below(other, to), real(one, from, other, to, flags));
}
int link(const char *from, const char *to) { REAL(link); WHOLE(LINK, is_below(-1, to), real(from, to)); }
int linkat(int one, const char *from, int other, const char *to, int flags) {
    REAL(linkat);
    WHOLE(LINK, is_below(other, to), real(one, from, other, to, flags));
}
int symlink(const char *to, const char *path) { REAL(symlink); WHOLE(LINK, is_below(-1, path), real(to, path)); }
int symlinkat(const char *to, int folder, const char *path) {
    REAL(symlinkat);
    WHOLE(LINK, is_below(folder, path), real(to, folder, path));
}
int unlink(const char *path) { REAL(unlink); WHOLE(UNLINK, is_below(-1, path), real(path)); }
int unlinkat(int folder, const char *path, int flags) {
    REAL(unlinkat);
    WHOLE(UNLINK, is_below(folder, path), real(folder, path, flags));
}
int rmdir(const char *path) { REAL(rmdir); WHOLE(UNLINK, is_below(-1, path), real(path)); }
int mkdir(const char *path, mode_t mode) { REAL(mkdir); WHOLE(MKDIR, is_below(-1, path), real(path, mode)); }
int mkdirat(int folder, const char *path, mode_t mode) {
    REAL(mkdirat);
    WHOLE(MKDIR, is_below(folder, path), real(folder, path, mode));
}
int chmod(const char *path, mode_t mode) { REAL(chmod); WHOLE(CHMOD, is_below(-1, path), real(path, mode)); }
int fchmod(int file, mode_t mode) { REAL(fchmod); WHOLE(CHMOD, is_watched(file), real(file, mode)); }
int fchmodat(int folder, const char *path, mode_t mode, int flags) {
    REAL(fchmodat);
    WHOLE(CHMOD, is_below(folder, path), real(folder, path, mode, flags));
}

#define MAPS(name)                                                                   \
    REAL(name);                                                                      \
    int found = is_watched(file) ? comes(MMAP) : 0;                                  \
    if (found == 1 + END_BEFORE || found == 1 + END_HALF) _exit(9);                  \
    if (found && found != 1 + END_AFTER) return wrong(found), MAP_FAILED;            \
    void *done = real(place, size, may, flags, file, at);                            \
    if (found == 1 + END_AFTER) _exit(9);                                            \
    return done

void *mmap(void *place, size_t size, int may, int flags, int file, off_t at) { MAPS(mmap); }
void *mmap64(void *place, size_t size, int may, int flags, int file, off64_t at) { MAPS(mmap64); }
