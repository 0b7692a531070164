/*
 * Stands between a program and the disk, for tests: LD_PRELOAD=recorder.so.
 *
 * SOPWELL_DISK_DIR   the folder that is watched; an absolute path without links
 * SOPWELL_DISK_LOG   the file that every change below the folder is recorded to, in order; none: no
 *                    record
 * SOPWELL_DISK_FAIL  which calls fail: KIND:FIRST:ERROR:TIMES, such as sync:30:EIO:1, or with :EVERY
 *                    at its end for the same again after every so many calls. KIND is write, sync or
 *                    read, counted from 1 below the folder; ERROR is EIO, ENOSPC or EROFS. A file
 *                    named "acks" never fails: it is the tester's own.
 *
 * A record is: operation (1 byte), length of the name (4), offset (8), length of the data (4), the
 * name from the folder on, the data; numbers in the machine's own order. Operations: C created, W
 * written, S file synced, D folder synced, T cut to offset, U removed, R renamed to the data, F failed
 * as asked.
 */
#define _GNU_SOURCE
#include <errno.h>
#include <fcntl.h>
#include <pthread.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/syscall.h>
#include <sys/types.h>
#include <sys/uio.h>
#include <unistd.h>

#define PATH_BYTES 4096

enum kind { WRITE, SYNC, READ, KINDS };

static const char *const KIND_NAMES[KINDS] = {"write", "sync", "read"};

static pthread_mutex_t mutex = PTHREAD_MUTEX_INITIALIZER;
static pthread_once_t once = PTHREAD_ONCE_INIT;
static char folder[PATH_BYTES];
static size_t folder_length;
static int log_fd = -1;
static int fail_kind = -1;
static long fail_first, fail_times, fail_every;
static int fail_error;
static long calls[KINDS];

static void set_up(void) {
    const char *dir = getenv("SOPWELL_DISK_DIR");
    const char *log = getenv("SOPWELL_DISK_LOG");
    const char *fail = getenv("SOPWELL_DISK_FAIL");
    if (dir == NULL || strlen(dir) + 1 >= PATH_BYTES) {
        return;
    }
    strcpy(folder, dir);
    folder_length = strlen(folder);
    if (log != NULL) {
        log_fd = syscall(SYS_openat, AT_FDCWD, log, O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600);
    }
    char kind[16], error[16];
    if (fail != NULL
            && sscanf(fail, "%15[a-z]:%ld:%15[A-Z]:%ld:%ld", kind, &fail_first, error, &fail_times,
                    &fail_every) >= 4) {
        for (int i = 0; i < KINDS; i++) {
            if (strcmp(kind, KIND_NAMES[i]) == 0) {
                fail_kind = i;
            }
        }
        fail_error = strcmp(error, "ENOSPC") == 0 ? ENOSPC : strcmp(error, "EROFS") == 0 ? EROFS : EIO;
    }
}

/* The name below the folder, "" for the folder itself, or NULL for what is none of ours. */
static const char *below(const char *path) {
    pthread_once(&once, set_up);
    if (folder_length == 0 || strncmp(path, folder, folder_length) != 0) {
        return NULL;
    }
    if (path[folder_length] == 0) {
        return "";
    }
    return path[folder_length] == '/' ? path + folder_length + 1 : NULL;
}

static const char *name_of(int fd, char *path) {
    char link[64];
    pthread_once(&once, set_up);
    if (folder_length == 0) {
        return NULL;
    }
    snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
    ssize_t length = syscall(SYS_readlinkat, AT_FDCWD, link, path, PATH_BYTES - 1);
    if (length <= 0) {
        return NULL;
    }
    path[length] = 0;
    return strstr(path, " (deleted)") != NULL ? NULL : below(path);
}

static void record(char op, const char *name, int64_t offset, const void *data, uint32_t length) {
    if (log_fd < 0) {
        return;
    }
    char head[17];
    uint32_t name_length = strlen(name);
    head[0] = op;
    memcpy(head + 1, &name_length, 4);
    memcpy(head + 5, &offset, 8);
    memcpy(head + 13, &length, 4);
    struct iovec parts[3] = {
        {head, sizeof head}, {(void *) name, name_length}, {(void *) data, length}};
    ssize_t all = sizeof head + name_length + length;
    if (syscall(SYS_writev, log_fd, parts, 3) != all) {
        abort(); /* A record with a hole would prove nothing. */
    }
}

/* Whether this call is one that fails; the mutex is held. */
static int fails(enum kind kind, const char *name) {
    if (strcmp(name, "acks") == 0) {
        return 0;
    }
    long since = ++calls[kind] - fail_first;
    if (fail_every > 0 && since >= 0) {
        since %= fail_every;
    }
    if ((int) kind == fail_kind && since >= 0 && since < fail_times) {
        record('F', name, 0, NULL, 0);
        errno = fail_error;
        return 1;
    }
    return 0;
}

static ssize_t written(int fd, const void *data, size_t length, off_t offset, int at) {
    char path[PATH_BYTES];
    const char *name = name_of(fd, path);
    if (name == NULL) {
        return at ? syscall(SYS_pwrite64, fd, data, length, offset)
                  : syscall(SYS_write, fd, data, length);
    }
    pthread_mutex_lock(&mutex);
    ssize_t done = -1;
    if (!fails(WRITE, name)) {
        if (at) {
            done = syscall(SYS_pwrite64, fd, data, length, offset);
        } else {
            done = syscall(SYS_write, fd, data, length);
            offset = syscall(SYS_lseek, fd, 0, SEEK_CUR) - (done > 0 ? done : 0);
        }
        if (done > 0) {
            int error = errno;
            record('W', name, offset, data, done);
            errno = error;
        }
    }
    pthread_mutex_unlock(&mutex);
    return done;
}

ssize_t write(int fd, const void *data, size_t length) { return written(fd, data, length, 0, 0); }

ssize_t pwrite(int fd, const void *data, size_t length, off_t offset) {
    return written(fd, data, length, offset, 1);
}

ssize_t pwrite64(int fd, const void *data, size_t length, off64_t offset) {
    return written(fd, data, length, offset, 1);
}

static ssize_t got(int fd, void *data, size_t length, off_t offset, int at) {
    char path[PATH_BYTES];
    pthread_once(&once, set_up);
    const char *name = fail_kind == READ ? name_of(fd, path) : NULL;
    if (name != NULL) {
        pthread_mutex_lock(&mutex);
        int failed = fails(READ, name);
        pthread_mutex_unlock(&mutex);
        if (failed) {
            return -1;
        }
    }
    return at ? syscall(SYS_pread64, fd, data, length, offset) : syscall(SYS_read, fd, data, length);
}

ssize_t read(int fd, void *data, size_t length) { return got(fd, data, length, 0, 0); }

ssize_t pread(int fd, void *data, size_t length, off_t offset) {
    return got(fd, data, length, offset, 1);
}

ssize_t pread64(int fd, void *data, size_t length, off64_t offset) {
    return got(fd, data, length, offset, 1);
}

static int synced(int fd, long call) {
    char path[PATH_BYTES];
    const char *name = name_of(fd, path);
    if (name == NULL) {
        return syscall(call, fd);
    }
    pthread_mutex_lock(&mutex);
    int result = -1;
    if (!fails(SYNC, name)) {
        result = syscall(call, fd);
        if (result == 0) {
            record(name[0] == 0 ? 'D' : 'S', name, 0, NULL, 0);
        }
    }
    pthread_mutex_unlock(&mutex);
    return result;
}

int fsync(int fd) { return synced(fd, SYS_fsync); }

int fdatasync(int fd) { return synced(fd, SYS_fdatasync); }

static int cut(int fd, off_t length) {
    char path[PATH_BYTES];
    const char *name = name_of(fd, path);
    if (name == NULL) {
        return syscall(SYS_ftruncate, fd, length);
    }
    pthread_mutex_lock(&mutex);
    int result = -1;
    if (!fails(WRITE, name)) {
        result = syscall(SYS_ftruncate, fd, length);
        if (result == 0) {
            record('T', name, length, NULL, 0);
        }
    }
    pthread_mutex_unlock(&mutex);
    return result;
}

int ftruncate(int fd, off_t length) { return cut(fd, length); }

int ftruncate64(int fd, off64_t length) { return cut(fd, length); }

int unlink(const char *path) {
    const char *name = below(path);
    if (name == NULL) {
        return syscall(SYS_unlinkat, AT_FDCWD, path, 0);
    }
    pthread_mutex_lock(&mutex);
    int result = syscall(SYS_unlinkat, AT_FDCWD, path, 0);
    if (result == 0) {
        record('U', name, 0, NULL, 0);
    }
    pthread_mutex_unlock(&mutex);
    return result;
}

int rename(const char *from, const char *to) {
    const char *name = below(from);
    const char *target = below(to);
    if (name == NULL || target == NULL) {
        return syscall(SYS_renameat2, AT_FDCWD, from, AT_FDCWD, to, 0);
    }
    pthread_mutex_lock(&mutex);
    int result = syscall(SYS_renameat2, AT_FDCWD, from, AT_FDCWD, to, 0);
    if (result == 0) {
        record('R', name, 0, target, strlen(target));
    }
    pthread_mutex_unlock(&mutex);
    return result;
}

static int opened(const char *path, int flags, mode_t mode) {
    const char *name = (flags & O_CREAT) ? below(path) : NULL;
    if (name == NULL) {
        return syscall(SYS_openat, AT_FDCWD, path, flags, mode);
    }
    pthread_mutex_lock(&mutex);
    int was_there = syscall(SYS_faccessat, AT_FDCWD, path, F_OK) == 0;
    int fd = syscall(SYS_openat, AT_FDCWD, path, flags, mode);
    if (fd >= 0 && !was_there) {
        record('C', name, 0, NULL, 0);
    } else if (fd >= 0 && (flags & O_TRUNC)) {
        record('T', name, 0, NULL, 0);
    }
    pthread_mutex_unlock(&mutex);
    return fd;
}

static mode_t mode_of(int flags, va_list more) {
    return (flags & O_CREAT) ? va_arg(more, mode_t) : 0;
}

#define OPEN(function)                                  \
    int function(const char *path, int flags, ...) {    \
        va_list more;                                   \
        va_start(more, flags);                          \
        mode_t mode = mode_of(flags, more);             \
        va_end(more);                                   \
        return opened(path, flags, mode);               \
    }

OPEN(open)
OPEN(open64)
