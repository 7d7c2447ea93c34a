#include "app/qturn/preview_reply.h"

#include "app/qturn/import_words.h"
#include "app/qturn/names.h"
#include "app/qturn/say.h"

namespace quarterturn {
namespace {

std::string day_and_minute(LocalTime time) {
    return iso_text(date_of(time)) + ' ' + clock_text(time);
}

// One photo, or several of one minute, need no two moments.
std::string taken_text(const std::string& first, const std::string& last) {
    return first == last ? "Taken " + first + '.' : "Taken from " + first + " to " + last + '.';
}

std::string photos_text(int count) {
    return count_text(static_cast<std::size_t>(count), "photo");
}

nlohmann::json moment_json(const std::optional<LocalTime>& moment) {
    return moment ? nlohmann::json(iso_text(*moment)) : nlohmann::json();
}

void add_waiting(std::vector<std::string>& lines, int count, const std::string& why) {
    if (count > 0) lines.push_back("  " + photos_text(count) + ' ' + why);
}

std::vector<std::string> lines_of(const ImportPreview& preview, const Names& names) {
    std::vector<std::string> lines{photos_text(preview.fresh) + " would be brought in."};
    if (preview.fresh > 0) {
        lines.emplace_back("Whether a photo opens is seen when it is brought in.");
    }
    if (preview.first) {
        lines.push_back(taken_text(day_and_minute(*preview.first), day_and_minute(*preview.last)));
    }
    for (const PhotosOfDevice& device : preview.devices) {
        lines.push_back("  " + photos_text(device.photos) + " by " + device_name(device.device));
    }
    for (const PhotosOfSitting& sitting : preview.sittings) {
        lines.push_back("  " + photos_text(sitting.photos) + " of the " +
                        names.sitting(sitting.sitting.id));
    }
    add_waiting(lines, preview.in_no_sitting, "taken when there was no sitting");
    add_waiting(lines, preview.in_several, "taken when there was more than one sitting");
    add_waiting(lines, preview.undated, "without a time");
    if (!preview.already_here.empty()) {
        lines.push_back(count_text(preview.already_here.size(), "photo") + " already here.");
    }
    append(lines, in_bin_lines(static_cast<std::size_t>(preview.in_bin)));
    if (!preview.left_alone.empty()) {
        lines.push_back(count_text(preview.left_alone.size(), "other file") +
                        " would be left alone:");
        for (const Path& file : preview.left_alone) lines.push_back("  " + file.string());
    }
    append(lines, refused_lines(preview.refused));
    if (preview.stopped) lines.emplace_back("Stopped before all was looked at.");
    return lines;
}

nlohmann::json sittings_json(const ImportPreview& preview) {
    auto list = nlohmann::json::array();
    for (const PhotosOfSitting& sitting : preview.sittings) {
        list.push_back({{"sitting", sitting.sitting.id.value}, {"photos", sitting.photos}});
    }
    return list;
}

nlohmann::json devices_json(const ImportPreview& preview) {
    auto list = nlohmann::json::array();
    for (const PhotosOfDevice& device : preview.devices) {
        list.push_back({{"device", device_name(device.device)}, {"photos", device.photos}});
    }
    return list;
}

}  // namespace

Reply preview_reply(Library& library, const ImportPreview& preview) {
    Reply reply{lines_of(preview, Names(library)),
                {{"would_import", preview.fresh},
                 {"bytes", preview.bytes},
                 {"first", moment_json(preview.first)},
                 {"last", moment_json(preview.last)},
                 {"devices", devices_json(preview)},
                 {"sittings", sittings_json(preview)},
                 {"in_no_sitting", preview.in_no_sitting},
                 {"in_several", preview.in_several},
                 {"undated", preview.undated},
                 {"already_here", preview.already_here.size()},
                 {"already_here_files", paths_json(preview.already_here)},
                 {"in_bin", preview.in_bin},
                 {"left_alone", preview.left_alone.size()},
                 {"left_alone_files", paths_json(preview.left_alone)},
                 {"refused", refused_json(preview.refused)},
                 {"stopped", preview.stopped}}};
    if (preview.stopped || !preview.refused.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

}  // namespace quarterturn
