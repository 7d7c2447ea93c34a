#pragma once
// A disk that fails when told to. Every call goes on to another file system, except those chosen to
// fail, which do nothing and throw the DiskError that the real disk would. To try every failure of
// a job: run it once and ask calls(), then once for each number from 1 to that.

#include <atomic>
#include <cerrno>
#include <limits>

#include "indexer/disk/disk_error.h"

namespace quarterturn {

class FailingDisk : public FileSystem {
  public:
    explicit FailingDisk(FileSystem& real = real_file_system()) : real_(&real) {}

    // The number-th call from now (1 is the next) fails; those after it work again.
    void fail_call(int number, int error_number = EIO) {
        calls_ = 0;
        first_ = last_ = number;
        error_number_ = error_number;
    }
    // The number-th call from now and all after it fail, as when a card is pulled.
    void fail_from_call(int number, int error_number = EIO) {
        fail_call(number, error_number);
        last_ = std::numeric_limits<int>::max();
    }
    void heal() { fail_call(0); }  // also counts from the start again

    int calls() const { return calls_; }
    bool failed() const { return first_ > 0 && calls_ >= first_; }

    FileState state(const Path& file) override {
        count(file, Doing::reading);
        return real_->state(file);
    }
    bool exists(const Path& file) override {
        count(file, Doing::reading);
        return real_->exists(file);
    }
    bool is_folder(const Path& path) override {
        count(path, Doing::reading);
        return real_->is_folder(path);
    }
    Bytes read(const Path& file, std::int64_t most_bytes) override {
        count(file, Doing::reading);
        return real_->read(file, most_bytes);
    }
    Bytes read_front(const Path& file, std::int64_t most_bytes) override {
        count(file, Doing::reading);
        return real_->read_front(file, most_bytes);
    }
    void read_through(const Path& file,
                      const std::function<void(std::span<const std::byte>)>& take) override {
        count(file, Doing::reading);
        real_->read_through(file, take);
    }
    void read_back(const Path& file,
                   const std::function<void(std::span<const std::byte>)>& take) override {
        count(file, Doing::reading);
        real_->read_back(file, take);
    }
    void write_new(const Path& file, std::span<const std::byte> bytes) override {
        count(file, Doing::writing);
        real_->write_new(file, bytes);
    }
    void sync_file(const Path& file) override {
        count(file, Doing::writing);
        real_->sync_file(file);
    }
    void sync_folder(const Path& folder) override {
        count(folder, Doing::writing);
        real_->sync_folder(folder);
    }
    void rename_new(const Path& from, const Path& to) override {
        count(from, Doing::moving);
        real_->rename_new(from, to);
    }
    void rename_over(const Path& from, const Path& to) override {
        count(from, Doing::moving);
        real_->rename_over(from, to);
    }
    void link_new(const Path& existing, const Path& name) override {
        count(name, Doing::linking);
        real_->link_new(existing, name);
    }
    void remove(const Path& file) override {
        count(file, Doing::removing);
        real_->remove(file);
    }
    void remove_empty_folder(const Path& folder) override {
        count(folder, Doing::removing);
        real_->remove_empty_folder(folder);
    }
    void make_folders(const Path& folder) override {
        count(folder, Doing::making_folder);
        real_->make_folders(folder);
    }
    std::vector<Path> list(const Path& folder) override {
        count(folder, Doing::reading);
        return real_->list(folder);
    }
    std::int64_t free_bytes(const Path& folder) override {
        count(folder, Doing::reading);
        return real_->free_bytes(folder);
    }

  protected:
    // Of another file, a call neither counts nor fails.
    virtual bool counts(const Path&) const { return true; }

  private:
    void count(const Path& file, Doing doing) {
        if (!counts(file)) return;
        const int call = ++calls_;
        if (call >= first_ && call <= last_ && first_ > 0) {
            throw disk_error(error_number_, file, doing);
        }
    }

    FileSystem* real_;
    std::atomic<int> calls_ = 0;  // jobs call from several threads
    int first_ = 0;
    int last_ = 0;
    int error_number_ = EIO;
};

}  // namespace quarterturn
