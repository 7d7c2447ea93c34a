#include "app/qturn/sort_reply.h"

#include "app/qturn/import_words.h"
#include "app/qturn/names.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"

namespace quarterturn {
namespace {

nlohmann::json unplaced_json(const UnplacedPhoto& unplaced, const Photo& photo) {
    auto fits = nlohmann::json::array();
    for (const SittingId sitting : unplaced.fits) fits.push_back(sitting.value);
    nlohmann::json object = short_json(photo);
    object["fits"] = fits;
    object["why"] = unplaced.why;
    return object;
}

std::string placed_text(const SortReport& report) {
    if (report.placed.empty()) return "Every photo that fits a sitting is there already.";
    return "Placed " + count_text(report.placed.size(), "photo") + " by time.";
}

}  // namespace

Reply sort_reply(Library& library, const SortReport& report) {
    Reply reply{{placed_text(report)},
                {{"placed", report.placed.size()},
                 {"not_moved", refused_json(report.not_moved)},
                 {"unplaced", nlohmann::json::array()}}};
    if (!report.not_moved.empty()) {
        reply.outcome = Outcome::needs_attention;
        append(reply.lines, not_moved_lines(report.not_moved));
    }
    if (report.unplaced.empty()) return reply;
    reply.outcome = Outcome::needs_attention;
    reply.lines.push_back(count_text(report.unplaced.size(), "photo") +
                          " for you to place (qturn place PHOTO… --sitting NUMBER):");
    for (const UnplacedPhoto& unplaced : report.unplaced) {
        const auto photo = library.photos().find(unplaced.photo);
        if (!photo) continue;
        reply.data["unplaced"].push_back(unplaced_json(unplaced, *photo));
        reply.lines.push_back("  " + number_text(photo->id.value) + "  " + unplaced.why);
    }
    return reply;
}

}  // namespace quarterturn
