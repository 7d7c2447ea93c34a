#include "indexer/intake/begun_intake.h"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "indexer/intake/move_lock.h"

namespace quarterturn {
namespace {

using nlohmann::json;

// Names may hold any bytes, which no text of the records may.
std::string text_of(const std::vector<Path>& sources) {
    json paths = json::array();
    for (const Path& source : sources) {
        const std::string& bytes = source.native();
        paths.push_back(std::vector<unsigned char>(bytes.begin(), bytes.end()));
    }
    return paths.dump();
}

std::vector<Path> sources_in(const std::string& text) try {
    std::vector<Path> sources;
    for (const auto& bytes : json::parse(text).get<std::vector<std::vector<unsigned char>>>()) {
        sources.emplace_back(std::string(bytes.begin(), bytes.end()));
    }
    return sources;
} catch (const json::exception&) {
    return {};
}

}  // namespace

void BegunIntake::keep(const std::vector<Path>& sources) {
    library_.settings().set(setting_, text_of(sources));
}

void BegunIntake::forget() {
    library_.settings().clear(setting_);
}

void BegunIntake::forget_if_said(const SoughtNames& names) {
    const bool said = std::ranges::any_of(sources(), [&](const Path& source) {
        return !names.said_in(source.native()).empty();
    });
    if (said) forget();
}

std::vector<Path> BegunIntake::sources() {
    const auto text = library_.settings().get(setting_);
    return text ? sources_in(*text) : std::vector<Path>();
}

std::vector<Path> interrupted_intake(Library& library) {
    std::vector<Path> sources = BegunIntake::once(library).sources();
    if (!sources.empty() && !MoveLock(library).held()) sources.clear();
    return sources;
}

IntakeUnderWay::IntakeUnderWay(Library& library, const std::vector<Path>& sources)
    : begun_(BegunIntake::once(library)) {
    begun_.keep(sources);
}

IntakeUnderWay::~IntakeUnderWay() try {
    begun_.forget();
} catch (const StoreError&) {
    // It is offered once more, and finds that all of it is there.
}

}  // namespace quarterturn
