#pragma once

#include "tests/support/disk_log.h"

namespace quarterturn {

// The real disk; what is changed below the log's folder is noted there once it is done.
class RecordingDisk : public FileSystem {
  public:
    explicit RecordingDisk(DiskLog& log) : log_(&log) {}

    FileState state(const Path& file) override { return real_.state(file); }
    bool exists(const Path& file) override { return real_.exists(file); }
    bool is_folder(const Path& path) override { return real_.is_folder(path); }
    Bytes read(const Path& file, std::int64_t most_bytes) override {
        return real_.read(file, most_bytes);
    }
    Bytes read_front(const Path& file, std::int64_t most_bytes) override {
        return real_.read_front(file, most_bytes);
    }
    void read_through(const Path& file,
                      const std::function<void(std::span<const std::byte>)>& take) override {
        real_.read_through(file, take);
    }
    void read_back(const Path& file,
                   const std::function<void(std::span<const std::byte>)>& take) override {
        real_.read_back(file, take);
    }
    void write_new(const Path& file, std::span<const std::byte> bytes) override {
        real_.write_new(file, bytes);
        if (!log_->watches(file)) return;
        const int added = log_->add_file(file);
        log_->add({.what = Happened::write,
                   .file = added,
                   .bytes = {reinterpret_cast<const char*>(bytes.data()), bytes.size()}});
    }
    void sync_file(const Path& file) override {
        real_.sync_file(file);
        if (log_->watches(file)) {
            log_->add({.what = Happened::sync_file, .file = log_->file_called(file)});
        }
    }
    void sync_folder(const Path& folder) override {
        real_.sync_folder(folder);
        log_->add({.what = Happened::sync_folder, .path = folder.string()});
    }
    void rename_new(const Path& from, const Path& to) override {
        real_.rename_new(from, to);
        renamed(from, to);
    }
    void rename_over(const Path& from, const Path& to) override {
        real_.rename_over(from, to);
        renamed(from, to);
    }
    void link_new(const Path& existing, const Path& name) override {
        real_.link_new(existing, name);
        if (!log_->watches(name)) return;
        log_->add(
            {.what = Happened::name, .file = log_->file_called(existing), .path = name.string()});
    }
    void remove(const Path& file) override {
        real_.remove(file);
        log_->add({.what = Happened::unname, .path = file.string()});
    }
    void remove_empty_folder(const Path& folder) override {
        real_.remove_empty_folder(folder);
        log_->add({.what = Happened::unname, .path = folder.string()});
    }
    // New ones are synced, as the real disk's are.
    void make_folders(const Path& folder) override {
        std::vector<Path> made;
        for (Path each = folder; !each.empty() && !real_.exists(each); each = each.parent_path()) {
            made.insert(made.begin(), each);
        }
        real_.make_folders(folder);
        for (const Path& each : made) {
            log_->add({.what = Happened::make_folder, .path = each.string()});
            log_->add({.what = Happened::sync_folder, .path = each.parent_path().string()});
        }
    }
    std::vector<Path> list(const Path& folder) override { return real_.list(folder); }
    std::int64_t free_bytes(const Path& folder) override { return real_.free_bytes(folder); }

  private:
    void renamed(const Path& from, const Path& to) {
        if (!log_->watches(to)) return;
        log_->add({.what = Happened::rename, .path = to.string(), .from = from.string()});
    }

    FileSystem& real_ = real_file_system();
    DiskLog* log_;
};

}  // namespace quarterturn
