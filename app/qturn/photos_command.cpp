#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"
#include "indexer/intake/search.h"

namespace quarterturn {
namespace {

struct PhotosOptions {
    std::string look;
    std::string sitting;
    std::string client;
    bool unplaced = false;
    bool untagged = false;
    bool flawed = false;
};

PhotoSearch search_from(Library& library, const PhotosOptions& options) {
    PhotoSearch search;
    if (!options.look.empty()) search.look = find_look(library, options.look).id;
    if (!options.sitting.empty()) search.sitting = find_sitting(library, options.sitting).id;
    if (!options.client.empty()) search.client = find_client(library, options.client).id;
    search.unplaced = options.unplaced;
    search.untagged = options.untagged;
    search.flawed = options.flawed;
    return search;
}

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

std::string flaws_text(const Photo& photo) {
    std::vector<std::string> words;
    for (const Flaw flaw : photo.flaws) words.emplace_back(word(flaw));
    if (words.empty()) return {};
    const std::string accepted = photo.tags.accepted_because;
    return joined(words) + (accepted.empty() ? "" : ", accepted: " + accepted);
}

Reply list(Session& session, const PhotosOptions& options) {
    const auto photos = search_photos(session.library(), search_from(session.library(), options));
    const Names names(session.library());
    std::vector<std::vector<std::string>> rows;
    for (const Photo& photo : photos) {
        rows.push_back({number_text(photo.id.value), photo.file.name, time_text(photo),
                        tags_text(photo, names), flaws_text(photo)});
    }
    Reply reply{columns(rows), {{"photos", list_json(photos, names)}}};
    reply.lines.push_back(count_text(photos.size(), "photo") + '.');
    return reply;
}

}  // namespace

void add_photos_command(CommandSet& commands) {
    const auto options = std::make_shared<PhotosOptions>();
    auto command = commands.add(
        {"photos", "Lists photos in the order of time.", "qturn photos --sitting 4 --untagged"},
        [options](Session& session) { return list(session, *options); });
    command.option("--look LOOK", options->look, "Only those of this look");
    command.option("--sitting NUMBER", options->sitting, "Only those of this sitting");
    command.option("--client CLIENT", options->client,
                   "Only those of her sittings and looks, or that show her");
    command.flag("--unplaced", options->unplaced, "Only those in no sitting");
    command.flag("--untagged", options->untagged, "Only those without an angle or a stage");
    command.flag("--flawed", options->flawed, "Only those with a flaw");
}

}  // namespace quarterturn
