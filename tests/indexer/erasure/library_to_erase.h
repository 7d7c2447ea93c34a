#pragma once

#include "tests/support/example_library.h"
#include "tests/support/files.h"

namespace quarterturn {

inline std::span<const std::byte> bytes_in(std::string_view text) {
    return std::as_bytes(std::span(text));
}

// Two photos, of which one is hers, with a small picture.
struct LibraryToErase : ExampleLibrary {
    LibraryToErase() {
        hers = add("hers.jpg");
        not_hers = add("other.jpg");
        Tags tags;
        tags.look = look;
        library.history().apply({"tagged", {{hers, tags}}, {}});
        write_bytes(library.cache_folder() / (sha256("hers.jpg") + ".jpg"), bytes_in("small"));
    }

    PhotoId add(const std::string& name) {
        Photo photo = example_photo(name);
        photo.file.path = "photos/2026/Mira/" + name;
        photo.file.bytes = std::ssize(name);
        std::filesystem::create_directories(library.photo_file(photo).parent_path());
        write_bytes(library.photo_file(photo), bytes_in(name));
        return library.photos().add(photo);
    }

    PhotoId hers;
    PhotoId not_hers;
};

inline std::size_t files_with(const Path& folder, const std::string& part) {
    std::size_t count = 0;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
        count += entry.path().filename().string().find(part) != std::string::npos ? 1 : 0;
    }
    return count;
}

}  // namespace quarterturn
