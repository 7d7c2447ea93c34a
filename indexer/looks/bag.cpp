#include "indexer/looks/bag.h"

#include <algorithm>
#include <cerrno>

#include "indexer/disk/checksum.h"
#include "indexer/disk/reads_back.h"

namespace quarterturn {
namespace {

std::span<const std::byte> bytes_of(std::string_view text) {
    return std::as_bytes(std::span(text.data(), text.size()));
}

// RFC 8493, 2.1.3: line ends and the percent sign are encoded, and nothing else.
std::string manifest_path(std::string_view path) {
    std::string encoded;
    for (const char c : path) {
        switch (c) {
            case '\n':
                encoded += "%0A";
                break;
            case '\r':
                encoded += "%0D";
                break;
            case '%':
                encoded += "%25";
                break;
            default:
                encoded += c;
        }
    }
    return encoded;
}

std::string manifest_text(const std::map<std::string, std::string>& manifest) {
    std::string text;
    for (const auto& [path, checksum] : manifest) {
        text += checksum + "  " + manifest_path(path) + "\n";
    }
    return text;
}

std::string on_one_line(std::string text) {
    std::replace_if(
        text.begin(), text.end(), [](char c) { return c == '\n' || c == '\r'; }, ' ');
    return text;
}

std::string info_text(const BagInfo& info) {
    std::string text;
    for (const auto& [label, value] : info) {
        if (!value.empty()) text += label + ": " + on_one_line(value) + "\n";
    }
    return text;
}

}  // namespace

BagWriter::BagWriter(FileSystem& disk, Path folder) : disk_(&disk), folder_(std::move(folder)) {
    make_folder(folder_);
}

void BagWriter::make_folder(const Path& folder) {
    if (std::find(folders_.begin(), folders_.end(), folder) != folders_.end()) return;
    if (folder != folder_) make_folder(folder.parent_path());
    disk_->make_folders(folder);
    folders_.push_back(folder);
}

void BagWriter::write(const Path& file, std::span<const std::byte> bytes) {
    make_folder(file.parent_path());
    disk_->write_new(file, bytes);
    files_.push_back(file);
    disk_->sync_file(file);
    if (!reads_back_as(*disk_, file, bytes)) {
        throw DiskError(
            file.string() +
                " does not read back as it was written: the disk may be failing. Choose "
                "another disk.",
            file, EIO);
    }
}

void BagWriter::add(const std::string& path, std::span<const std::byte> bytes) {
    const std::string below_bag = "data/" + path;
    write(folder_ / below_bag, bytes);
    payload_[below_bag] = sha256(bytes);
    payload_bytes_ += static_cast<std::int64_t>(bytes.size());
}

void BagWriter::add(const std::string& path, std::string_view text) {
    add(path, bytes_of(text));
}

void BagWriter::write_tag_file(const std::string& name, std::string_view text) {
    write(folder_ / name, bytes_of(text));
    tags_[name] = sha256(text);
}

void BagWriter::finish(BagInfo info) {
    info.emplace_back("Payload-Oxum",
                      std::to_string(payload_bytes_) + "." + std::to_string(payload_.size()));
    write_tag_file("bagit.txt", "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n");
    write_tag_file("bag-info.txt", info_text(info));
    write_tag_file("manifest-sha256.txt", manifest_text(payload_));
    write(folder_ / "tagmanifest-sha256.txt", bytes_of(manifest_text(tags_)));
    for (const Path& folder : folders_) disk_->sync_folder(folder);
}

void BagWriter::abandon() noexcept {
    const auto try_to = [](const auto& work) {
        try {
            work();
        } catch (const std::exception&) {
            // What cannot be taken away stays under its unfinished name.
        }
    };
    for (const Path& file : files_) try_to([&] { disk_->remove(file); });
    std::reverse(folders_.begin(), folders_.end());
    for (const Path& folder : folders_) try_to([&] { disk_->remove_empty_folder(folder); });
}

}  // namespace quarterturn
