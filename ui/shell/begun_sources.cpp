#include "ui/shell/begun_sources.h"

#include <QSettings>
#include <QVariantList>

namespace quarterturn {
namespace {

constexpr auto group = "bringing in";
constexpr auto library_key = "bringing in/library";
constexpr auto sources_key = "bringing in/sources";

// Names may hold any bytes.
QByteArray bytes_of(const Path& path) {
    return QByteArray::fromStdString(path.native());
}

}  // namespace

void BegunSources::keep(const std::vector<Path>& sources) const {
    QVariantList paths;
    for (const Path& source : sources) paths << bytes_of(source);
    QSettings settings;
    settings.setValue(library_key, bytes_of(library_));
    settings.setValue(sources_key, paths);
    settings.sync();
}

void BegunSources::forget() const {
    QSettings settings;
    settings.remove(group);
    settings.sync();
}

std::vector<Path> BegunSources::left() const {
    const QSettings settings;
    std::vector<Path> sources;
    if (settings.value(library_key).toByteArray() != bytes_of(library_)) return sources;
    for (const QVariant& path : settings.value(sources_key).toList()) {
        sources.emplace_back(path.toByteArray().toStdString());
    }
    return sources;
}

}  // namespace quarterturn
