#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/consent_reply.h"
#include "app/qturn/find.h"
#include "app/qturn/names.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"
#include "indexer/disk/clock.h"
#include "indexer/portfolio/candidates.h"
#include "indexer/worker/confined.h"

namespace quarterturn {
namespace {

using nlohmann::json;

struct CandidateOptions {
    std::string use;
    Text on;
    bool ready = false;
};

std::string candidate_line(const Candidate& candidate) {
    std::string line = number_text(candidate.photo.id.value) + "  " + candidate.photo.file.name +
                       "  " + candidate.look.name;
    if (candidate.photo.tags.angle) line += ", " + std::string(word(*candidate.photo.tags.angle));
    return line + (candidate.signed_off ? ", signed off" : ", not signed off yet");
}

void add_candidate(Reply& reply, const Candidate& candidate) {
    reply.lines.push_back(candidate_line(candidate));
    for (const std::string& lack : candidate.lacks) reply.lines.push_back("      " + lack);
    json each = short_json(candidate.photo);
    each["look"] = candidate.look.name;
    each["look_id"] = candidate.look.id.value;
    each["families"] = candidate.families;
    each["signed_off"] = candidate.signed_off;
    each["lacks"] = candidate.lacks;
    reply.data["photos"].push_back(std::move(each));
}

Reply list_candidates(Session& session, const CandidateOptions& options) {
    Library& library = session.library();
    const Use use = use_from(options.use);
    const Date on = options.on ? date_from(*options.on) : date_of(local_now());
    const auto decoder = make_confined_decoder();
    const auto all = candidates(library, *decoder, use, on);
    Reply reply{{}, {{"use", word(use)}, {"on", iso_text(on)}, {"photos", json::array()}}};
    for (const Candidate& candidate : all) {
        if (!options.ready || candidate.lacks.empty()) add_candidate(reply, candidate);
    }
    if (reply.lines.empty()) {
        reply.lines.emplace_back("No usable photo of a finished look: tag them with stage after.");
    }
    reply.data["families"] = json::array();
    std::vector<std::string> shown;
    for (const FamilyCount& count : balance(library, all)) {
        shown.push_back(count.family + " " + std::to_string(count.photos));
        reply.data["families"].push_back({{"family", count.family}, {"photos", count.photos}});
    }
    reply.lines.push_back("Of those that may go: " + joined(shown) + ".");
    return reply;
}

struct SelectionOptions {
    std::string name;
    Texts photos;
    bool forget = false;
};

json selection_json(Library& library, const PhotoSelection& selection) {
    json photos = json::array();
    for (const Photo& photo : photos_in(library, selection)) photos.push_back(short_json(photo));
    return {{"name", selection.name}, {"photos", photos}};
}

Reply select(Session& session, const SelectionOptions& options) {
    Library& library = session.library();
    if (options.forget) {
        const std::string name = find_selection(library, options.name).name;
        library.history().record("forgot the selection " + name,
                                 [&] { library.selections().remove(name); });
        return {{"Forgotten: " + options.name + "."}, {{"name", options.name}}};
    }
    if (options.photos.empty()) throw WrongUse("Name the photos in the order they are shown in.");
    const PhotoSelection selection{options.name, ids_of(find_photos(library, options.photos))};
    library.history().record("changed the selection " + options.name,
                             [&] { library.selections().keep(selection); });
    return {{options.name + ": " + count_text(selection.photos.size(), "photo") + "."},
            selection_json(library, selection)};
}

Reply list_selections(Session& session) {
    Library& library = session.library();
    Reply reply{{}, {{"selections", json::array()}}};
    for (const PhotoSelection& selection : library.selections().all()) {
        reply.lines.push_back(selection.name);
        const json told = selection_json(library, selection);
        for (const json& photo : told["photos"]) {
            reply.lines.push_back("  " + number_text(photo["id"].get<std::int64_t>()) + "  " +
                                  photo["name"].get<std::string>());
        }
        reply.data["selections"].push_back(told);
    }
    if (reply.lines.empty()) {
        reply.lines.emplace_back("No selections yet. Make one with: qturn portfolio select");
    }
    return reply;
}

}  // namespace

void add_selection_commands(CommandSet& commands) {
    const auto options = std::make_shared<CandidateOptions>();
    auto command = commands.add(
        {"portfolio candidates",
         "Lists the usable photos of finished looks, those that may go first, and what is missing "
         "to clear the others.",
         "qturn portfolio candidates --for website"},
        [options](Session& session) { return list_candidates(session, *options); });
    command.required_option("--for USE", options->use,
                            "own record, shown in consultation, website, social media, print, "
                            "competition or teaching");
    command.option("--on YYYY-MM-DD", options->on, "On which day; today unless named");
    command.flag("--ready", options->ready, "Only those that may go");

    const auto selection = std::make_shared<SelectionOptions>();
    auto select_command = commands.add(
        {"portfolio select", "Keeps photos under a name, in the order they are to be shown in.",
         "qturn portfolio select 'Spring page' 14 12 18"},
        [selection](Session& session) { return select(session, *selection); });
    select_command.argument("NAME", selection->name, "What you call it");
    select_command.optional_argument("PHOTOS", selection->photos,
                                     "By name, number, numbers from to, or SHA-256");
    select_command.flag("--forget", selection->forget, "Keep it no longer; the photos stay");

    commands.add({"portfolio selections", "Lists what was selected.", "qturn portfolio selections"},
                 list_selections);
}

}  // namespace quarterturn
