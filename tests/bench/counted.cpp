// counted JOB…: one job, for instructions.sh to count its instructions under callgrind.
//   open FOLDER               what a worker does with each photo of the folder
//   import FOLDER LIBRARY     what the program does to bring them in, while workers open them
//   search LIBRARY            photos by a word, and by a word and what is known of them

#include <cstdio>
#include <span>
#include <string_view>

#include "indexer/image/measure.h"
#include "indexer/intake/import.h"
#include "indexer/store/search_table.h"
#include "indexer/worker/confined.h"
#include "indexer/worker/photo_decoder.h"

namespace {

using namespace quarterturn;

bool open_all(const Path& folder) {
    FileSystem& disk = real_file_system();
    const auto pictures = make_decoder_of_all_but_heif();
    PhotoDecoder decoder{*pictures};
    for (const Path& file : disk.list(folder)) {
        const Bytes bytes = disk.read(file, any_size);
        const FileMetadata metadata = read_metadata(bytes);
        if (!decoder.decode({bytes, metadata.orientation, measuring_edge}).ok()) return false;
    }
    return true;
}

bool bring_in(const Path& folder, const Path& place) {
    Library library = Library::create(place);
    const auto decoder = make_confined_decoder();
    const auto report = import_photos(library, *decoder, {.sources = {folder}});
    return report.refused.empty() && !report.imported.empty();
}

bool search(const Path& place) {
    Library library = Library::open(place);
    SearchTable table{library.database()};
    return !table.find({.words = "pearl"}).empty() &&
           !table.find({.words = "bun", .stage = Stage::after, .angle = Angle::back}).empty();
}

bool done(std::string_view job, std::span<char*> words) {
    if (job == "open" && words.size() == 1) return open_all(words[0]);
    if (job == "import" && words.size() == 2) return bring_in(words[0], words[1]);
    if (job == "search" && words.size() == 1) return search(words[0]);
    std::fputs("Usage: counted open|import|search …\n", stderr);
    return false;
}

}  // namespace

int main(int count, char** words) {
    if (count < 2) return 2;
    return done(words[1], std::span(words, static_cast<std::size_t>(count)).subspan(2)) ? 0 : 1;
}
