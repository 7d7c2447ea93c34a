#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"
#include "indexer/intake/search.h"
#include "indexer/rules/burst.h"
#include "indexer/rules/disagreement.h"

namespace quarterturn {
namespace {

struct CheckOptions {
    std::string look;
    std::string sitting;
};

std::vector<Photo> chosen_photos(Library& library, const CheckOptions& options) {
    PhotoSearch search;
    if (!options.look.empty()) search.look = find_look(library, options.look).id;
    if (!options.sitting.empty()) search.sitting = find_sitting(library, options.sitting).id;
    return search_photos(library, search);
}

std::string photo_text(const Photo& photo) {
    return number_text(photo.id.value) + "  " + photo.file.name;
}

Reply check(Session& session, const CheckOptions& options) {
    Reply reply{{}, {{"questions", nlohmann::json::array()}}};
    for (const Photo& photo : chosen_photos(session.library(), options)) {
        const auto question = disagreement(photo);
        if (!question) continue;
        nlohmann::json object = short_json(photo);
        object["question"] = *question;
        reply.data["questions"].push_back(object);
        reply.lines.push_back(photo_text(photo) + ": " + *question);
    }
    if (reply.lines.empty()) return {{"Tags and pictures agree."}, reply.data};
    reply.outcome = Outcome::needs_attention;
    return reply;
}

Reply bursts(Session& session, const CheckOptions& options, bool alike) {
    const auto photos = chosen_photos(session.library(), options);
    std::map<PhotoId, const Photo*> by_id;
    for (const Photo& photo : photos) by_id[photo.id] = &photo;
    Reply reply{{}, {{"groups", nlohmann::json::array()}}};
    for (const auto& group : alike ? find_near_duplicates(photos) : find_bursts(photos)) {
        auto members = nlohmann::json::array();
        std::vector<std::string> names;
        for (const PhotoId id : group) {
            members.push_back(short_json(*by_id.at(id)));
            names.push_back(photo_text(*by_id.at(id)));
        }
        reply.data["groups"].push_back(members);
        reply.lines.push_back("Sharpest first: " + joined(names));
    }
    if (reply.lines.empty()) {
        reply.lines.emplace_back(alike ? "No photos look alike." : "No bursts.");
    }
    return reply;
}

void add_choice(Command command, CheckOptions& options) {
    command.option("--look LOOK", options.look, "Only photos of this look");
    command.option("--sitting NUMBER", options.sitting, "Only photos of this sitting");
}

}  // namespace

void add_check_commands(CommandSet& commands) {
    const auto options = std::make_shared<CheckOptions>();
    auto check_command =
        commands.add({"check", "Asks where a tag and the picture disagree. It changes nothing.",
                      "qturn check --sitting 4"},
                     [options](Session& session) { return check(session, *options); });
    add_choice(check_command, *options);

    const auto alike = std::make_shared<bool>(false);
    auto burst_command = commands.add(
        {"bursts", "Lists photos of the same thing taken moments apart, the sharpest first.",
         "qturn bursts --sitting 4"},
        [options, alike](Session& session) { return bursts(session, *options, *alike); });
    add_choice(burst_command, *options);
    burst_command.flag("--alike", *alike, "Photos that look alike, whenever they were taken");
}

}  // namespace quarterturn
