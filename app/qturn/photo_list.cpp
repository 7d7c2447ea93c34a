#include "app/qturn/photo_list.h"

#include "app/qturn/find.h"
#include "app/qturn/parse.h"
#include "app/qturn/reply.h"
#include "app/qturn/say.h"

namespace quarterturn {
namespace {

std::string time_text(const Photo& photo) {
    if (!photo.moment) return "time unknown";
    return iso_text(date_of(*photo.moment)) + ' ' + iso_text(*photo.moment).substr(11);
}

std::string tags_text(const Photo& photo, const Names& names) {
    const Tags& tags = photo.tags;
    std::vector<std::string> words;
    if (tags.stage) words.emplace_back(word(*tags.stage));
    if (tags.angle) words.emplace_back(word(*tags.angle));
    if (tags.mirrored) words.emplace_back("mirrored");
    if (tags.look) words.push_back("look " + names.look(*tags.look));
    if (!tags.sitting) words.emplace_back("in no sitting");
    std::string text;
    for (const std::string& tag : words) text += (text.empty() ? "" : ", ") + tag;
    return text;
}

// As one typed them, with spaces between.
std::string spaced(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words) text += (text.empty() ? "" : " ") + word;
    return text;
}

}  // namespace

std::string flaws_text(const Photo& photo) {
    std::vector<std::string> words;
    for (const Flaw flaw : photo.flaws) words.emplace_back(word(flaw));
    if (words.empty()) return {};
    const std::string accepted = photo.tags.accepted_because;
    return joined(words) + (accepted.empty() ? "" : ", accepted: " + accepted);
}

PhotoSearch search_from(Library& library, const SearchOptions& options) {
    PhotoSearch search;
    search.words = spaced(options.words);
    if (!options.look.empty()) search.look = find_look(library, options.look).id;
    if (!options.sitting.empty()) search.sitting = find_sitting(library, options.sitting).id;
    if (!options.client.empty()) search.client = find_client(library, options.client).id;
    if (!options.stage.empty()) search.stage = stage_from(options.stage);
    if (!options.angle.empty()) search.angle = angle_from(options.angle);
    if (!options.device.empty()) search.device = find_device(library, options.device).id;
    if (!options.from.empty()) search.from = date_from(options.from);
    if (!options.to.empty()) search.to = date_from(options.to);
    if (search.from && search.to && *search.from > *search.to) {
        throw WrongUse("The day after --from lies behind the one after --to: exchange the two.");
    }
    search.unplaced = options.unplaced;
    search.untagged = options.untagged;
    search.flawed = options.flawed;
    return search;
}

std::vector<std::string> photo_cells(const Photo& photo, const Names& names) {
    return {number_text(photo.id.value), photo.file.name, time_text(photo), tags_text(photo, names),
            flaws_text(photo)};
}

}  // namespace quarterturn
