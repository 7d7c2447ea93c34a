#include "indexer/portfolio/inspiration.h"

#include "indexer/disk/checksum.h"
#include "indexer/intake/file_names.h"
#include "indexer/worker/confined.h"

namespace quarterturn {
namespace {

constexpr std::int64_t most_bytes = std::int64_t{1} << 30;

// Two clients may bring the same picture, and one client two of one name.
Path place_for(ClientId client, const std::string& sha256, const std::string& name) {
    return Path("inspiration") / ("client " + std::to_string(client.value)) /
           (sha256.substr(0, 12) + " " + as_folder_part(name));
}

}  // namespace

Decoded picture_from_elsewhere(FileSystem& disk, Decoder& decoder, const Path& file,
                               int long_edge) try {
    const Bytes bytes = disk.read(file, most_bytes);
    const int orientation = read_metadata_confined(bytes).orientation;
    return decoder.decode({bytes, orientation, long_edge});
} catch (const GivenUp& reason) {
    Decoded decoded;
    decoded.refused = reason.what();
    return decoded;
}

Path inspiration_file(const Library& library, const Inspiration& inspiration) {
    return library.folder() / inspiration.path;
}

Inspiration keep_inspiration(Library& library, const Path& picture, ClientId client,
                             LocalTime kept_at) {
    const Bytes bytes = library.disk().read(picture, most_bytes);
    const std::string sum = sha256(bytes);
    InspirationTable table = library.inspirations();
    const auto kept = table.of_client(client, sum);
    if (kept && library.disk().exists(inspiration_file(library, *kept))) return *kept;
    Inspiration inspiration = kept.value_or(
        Inspiration{{}, client, as_text(picture.filename().native()), {}, sum, kept_at});
    if (!kept) inspiration.path = place_for(client, sum, inspiration.name);
    const Path file = inspiration_file(library, inspiration);
    library.disk().make_folders(file.parent_path());
    replace_file(library.disk(), file, bytes);
    if (!kept) inspiration.id = table.add(inspiration);
    return inspiration;
}

void remove_inspiration(Library& library, InspirationId id) {
    InspirationTable table = library.inspirations();
    const auto kept = table.find(id);
    Transaction both(library.database());
    table.remove(id);
    library.history().stop_at("removed a picture that was kept with a client");
    both.commit();
    const Path file = inspiration_file(library, *kept);
    if (library.disk().exists(file)) library.disk().remove(file);
}

}  // namespace quarterturn
