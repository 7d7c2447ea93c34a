#include "indexer/lock/locked_file_system.h"

#include <algorithm>
#include <cerrno>

#include "indexer/lock/lock_file.h"
#include "indexer/lock/locked_contents.h"
#include "indexer/lock/locked_name.h"

namespace quarterturn {
namespace {

Path whole_path(const Path& path) {
    const Path normal = std::filesystem::absolute(path).lexically_normal();
    return normal.has_filename() ? normal : normal.parent_path();
}

}  // namespace

bool stays_as_it_is(const Path& below) {
    const std::string top = below.begin()->native();
    const std::string name = below.filename().native();
    switch (std::distance(below.begin(), below.end())) {
        case 1:
            return name == lock_file_name || name == left_lock_name || name == "READ ME.txt" ||
                   name.starts_with("records.sqlite");
        case 2:
            return (top == "records" || top == "restoring") &&
                   name.find(".sqlite") != std::string::npos;
        default:
            return false;
    }
}

LockedFileSystem::LockedFileSystem(FileSystem& beneath, const Path& folder, KeysInHand keys)
    : beneath_(beneath), fronts_(beneath), folder_(whole_path(folder)), keys_(std::move(keys)) {}

Path LockedFileSystem::plain_name(const Path& place, Path plain) const {
    const Path asked_for = plain;
    for (; plain.has_relative_path(); plain = plain.parent_path()) {
        if (place_of(plain) == place) return plain;
    }
    return asked_for;
}

template <class Call>
auto LockedFileSystem::named(const Path& plain, Doing doing, Call call) const {
    try {
        return call();
    } catch (const DiskError& error) {
        throw disk_error(error.error_number(), plain_name(error.file(), plain), doing);
    } catch (const DamagedContents&) {
        throw disk_error(EBADMSG, plain, doing);
    }
}

std::optional<Path> LockedFileSystem::below(const Path& path) const {
    const Path whole = whole_path(path);
    const auto [of_folder, of_path] = std::ranges::mismatch(folder_, whole);
    if (of_folder != folder_.end()) return std::nullopt;
    Path rest;
    for (auto part = of_path; part != whole.end(); ++part) rest /= *part;
    return rest;
}

bool LockedFileSystem::encrypted(const Path& file) const {
    const auto rest = below(file);
    return rest && !rest->empty() && !stays_as_it_is(*rest);
}

Path LockedFileSystem::place_of(const Path& plain) const {
    const auto rest = below(plain);
    if (!rest) return plain;
    Path place = folder_;
    Path folder;
    for (const Path& part : *rest) {
        const bool stays = folder.empty() || stays_as_it_is(folder / part);
        place /=
            stays ? part
                  : place_of_locked_name(lock_name(*keys_, folder.generic_string(), part.native()));
        folder /= part;
    }
    return place;
}

FileState LockedFileSystem::state(const Path& file) {
    FileState found = named(file, Doing::reading, [&] { return beneath_.state(place_of(file)); });
    if (found.regular && encrypted(file)) found.bytes = unlocked_size(found.bytes).value_or(-1);
    return found;
}

bool LockedFileSystem::exists(const Path& file) {
    return named(file, Doing::reading, [&] { return beneath_.exists(place_of(file)); });
}

bool LockedFileSystem::is_folder(const Path& path) {
    return named(path, Doing::reading, [&] { return beneath_.is_folder(place_of(path)); });
}

Bytes LockedFileSystem::unlocked(const Path& file, const Bytes& locked) const {
    if (!encrypted(file)) return locked;
    Bytes bytes;
    bytes.reserve(locked.size());
    ContentsReader reader(*keys_, [&](std::span<const std::byte> piece) {
        bytes.insert(bytes.end(), piece.begin(), piece.end());
    });
    reader.feed(locked);
    reader.end();
    return bytes;
}

Bytes LockedFileSystem::read(const Path& file, std::int64_t most_bytes) {
    // Of what is larger than half of all sizes, the locked size would be no number.
    const bool limited = encrypted(file) && most_bytes < any_size / 2;
    const std::int64_t most = limited ? locked_size(most_bytes) : most_bytes;
    return named(file, Doing::reading,
                 [&] { return unlocked(file, beneath_.read(place_of(file), most)); });
}

Bytes LockedFileSystem::read_front(const Path& file, std::int64_t most_bytes) {
    return named(file, Doing::reading, [&] {
        if (!encrypted(file)) return beneath_.read_front(place_of(file), most_bytes);
        // Whole pieces: of a part nobody could say that it is sound.
        const std::int64_t most = most_bytes < any_size / 2 ? front_to_read(most_bytes) : any_size;
        Bytes front;
        ContentsReader reader(*keys_, [&](std::span<const std::byte> piece) {
            front.insert(front.end(), piece.begin(), piece.end());
        });
        const Bytes locked = beneath_.read_front(place_of(file), most);
        reader.feed(locked);
        if (std::ssize(locked) < most) reader.end();
        front.resize(
            static_cast<std::size_t>(std::min<std::int64_t>(most_bytes, std::ssize(front))));
        return front;
    });
}

void LockedFileSystem::read_pieces(ReadPieces how, const Path& file,
                                   const std::function<void(std::span<const std::byte>)>& take) {
    named(file, Doing::reading, [&] {
        if (!encrypted(file)) return (beneath_.*how)(place_of(file), take);
        ContentsReader reader(*keys_, take);
        (beneath_.*how)(place_of(file),
                        [&](std::span<const std::byte> piece) { reader.feed(piece); });
        reader.end();
    });
}

void LockedFileSystem::read_through(const Path& file,
                                    const std::function<void(std::span<const std::byte>)>& take) {
    read_pieces(&FileSystem::read_through, file, take);
}

void LockedFileSystem::read_back(const Path& file,
                                 const std::function<void(std::span<const std::byte>)>& take) {
    read_pieces(&FileSystem::read_back, file, take);
}

void LockedFileSystem::write_new(const Path& file, std::span<const std::byte> bytes) {
    named(file, Doing::writing, [&] {
        const Path place = place_of(file);
        if (!encrypted(file)) return beneath_.write_new(place, bytes);
        fronts_.make(place);
        beneath_.write_new(place, locked_contents(*keys_, bytes));
    });
}

void LockedFileSystem::sync_file(const Path& file) {
    named(file, Doing::writing, [&] {
        const Path place = place_of(file);
        beneath_.sync_file(place);
        fronts_.sync(place);
    });
}

void LockedFileSystem::sync_folder(const Path& folder) {
    named(folder, Doing::writing, [&] { beneath_.sync_folder(place_of(folder)); });
}

void LockedFileSystem::drop_empty_fronts(const Path& folder) {
    named(folder, Doing::removing, [&] { fronts_.drop_empty_in(place_of(folder)); });
}

void LockedFileSystem::refuse_to_move(const Path& from, const Path& to, Doing doing) {
    if (encrypted(from) != encrypted(to)) throw disk_error(EXDEV, to, doing);
    // The names in a folder are tied to its own.
    if (encrypted(from) && is_folder(from)) throw disk_error(ENOTSUP, from, doing);
}

template <class Move>
void LockedFileSystem::move(const Path& from, const Path& to, Move move) {
    refuse_to_move(from, to, Doing::moving);
    const Path place = place_of(from);
    try {
        const Path other = place_of(to);
        fronts_.make(other);
        move(place, other);
        fronts_.sync(other);
        fronts_.drop_if_empty(place);
    } catch (const DiskError& error) {
        throw disk_error(error.error_number(), error.file() == place ? from : to, Doing::moving);
    }
}

void LockedFileSystem::rename_new(const Path& from, const Path& to) {
    move(from, to,
         [&](const Path& place, const Path& other) { beneath_.rename_new(place, other); });
}

void LockedFileSystem::rename_over(const Path& from, const Path& to) {
    move(from, to,
         [&](const Path& place, const Path& other) { beneath_.rename_over(place, other); });
}

void LockedFileSystem::link_new(const Path& existing, const Path& name) {
    refuse_to_move(existing, name, Doing::linking);
    named(name, Doing::linking, [&] {
        const Path place = place_of(name);
        fronts_.make(place);
        beneath_.link_new(place_of(existing), place);
        fronts_.sync(place);
    });
}

void LockedFileSystem::remove(const Path& file) {
    named(file, Doing::removing, [&] {
        const Path place = place_of(file);
        beneath_.remove(place);
        fronts_.drop_if_empty(place);
    });
}

void LockedFileSystem::remove_empty_folder(const Path& folder) {
    named(folder, Doing::removing, [&] {
        const Path place = place_of(folder);
        if (beneath_.is_folder(place)) drop_empty_fronts(folder);
        beneath_.remove_empty_folder(place);
        fronts_.drop_if_empty(place);
    });
}

void LockedFileSystem::make_folders(const Path& folder) {
    named(folder, Doing::making_folder, [&] { beneath_.make_folders(place_of(folder)); });
}

std::optional<Path> LockedFileSystem::plain_entry(const Path& folder, const Path& below_folder,
                                                  const std::string& name) const {
    if (below_folder.empty() || stays_as_it_is(below_folder / name)) return folder / name;
    const auto plain = unlock_name(*keys_, below_folder.generic_string(), name);
    return plain ? std::optional(folder / *plain) : std::nullopt;
}

std::vector<std::string> LockedFileSystem::names_at(const Path& below_folder, const Path& entry) {
    if (below_folder.empty()) return {entry.filename().native()};
    return fronts_.names_at(entry);
}

std::vector<Path> LockedFileSystem::list(const Path& folder) {
    const auto below_folder = below(folder);
    const auto found =
        named(folder, Doing::reading, [&] { return beneath_.list(place_of(folder)); });
    if (!below_folder) return found;
    std::vector<Path> entries;
    for (const Path& entry : found) {
        const auto names =
            named(folder, Doing::reading, [&] { return names_at(*below_folder, entry); });
        for (const std::string& name : names) {
            if (auto plain = plain_entry(folder, *below_folder, name)) {
                entries.push_back(std::move(*plain));
            }
        }
    }
    std::ranges::sort(entries);
    return entries;
}

std::int64_t LockedFileSystem::free_bytes(const Path& folder) {
    return named(folder, Doing::reading, [&] { return beneath_.free_bytes(place_of(folder)); });
}

}  // namespace quarterturn
