#include "ui/first_run/demo.h"

#include <QCoreApplication>
#include <QStandardPaths>

#include "indexer/intake/scenario.h"
#include "indexer/intake/sort.h"

namespace quarterturn {
namespace {

constexpr std::int64_t most_scenario_bytes = 4 << 20;

std::string text_of(FileSystem& disk, const Path& file) {
    const Bytes bytes = disk.read(file, most_scenario_bytes);
    return {reinterpret_cast<const char*>(bytes.data()), bytes.size()};
}

}  // namespace

std::optional<Path> find_demo_photos() {
    const Path program = QCoreApplication::applicationDirPath().toStdString();
    for (const Path& folder : {program / ".." / "share" / "quarterturn" / "demo_photos",
                               Path(QUARTERTURN_DEMO_PHOTOS)}) {
        std::error_code none;
        if (std::filesystem::exists(folder / "scenario.json", none)) return folder;
    }
    return std::nullopt;
}

Path demo_library_folder() {
    const QString data = QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation);
    return Path(data.toStdString()) / "demo";
}

void fill_with_demo(Library& library, Decoder& decoder, const Path& demo_photos, LocalTime now,
                    const std::function<void(const ImportProgress&)>& progress,
                    std::stop_token stop) {
    load_scenario(library, text_of(library.disk(), demo_photos / "scenario.json"), now);
    const ImportReport report = import_photos(
        library, decoder,
        {.sources = {demo_photos / "photos"}, .progress = progress, .stop = std::move(stop)});
    if (report.stopped) return;
    sort_by_time(library);
    const Path tags = demo_photos / "tags.json";
    if (library.disk().exists(tags)) load_tags(library, text_of(library.disk(), tags));
}

}  // namespace quarterturn
