#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/consent_reply.h"
#include "app/qturn/find.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"
#include "indexer/disk/clock.h"
#include "indexer/intake/heads.h"
#include "indexer/looks/photo_gate.h"
#include "indexer/worker/confined.h"

namespace quarterturn {
namespace {

using nlohmann::json;

struct WhoseOptions {
    Texts photos;
    bool own = false;
    std::string photographer;
    bool somebody_else = false;
    Texts licensed;
    Text until;
    Text credit;
    bool no_credit = false;
};

void refuse_unclear(const WhoseOptions& options) {
    const int ways = static_cast<int>(options.own) +
                     static_cast<int>(!options.photographer.empty()) +
                     static_cast<int>(options.somebody_else);
    if (ways > 1) throw WrongUse("A photo is --own, or a --photographer's, or --somebody-else's.");
    if (options.no_credit && options.credit) {
        throw WrongUse("Either a --credit line is wanted, or --no-credit.");
    }
    const bool licence = !options.licensed.empty() || options.until || options.no_credit;
    if (licence && options.photographer.empty()) {
        throw WrongUse("A licence belongs to a photographer: name her or him with --photographer.");
    }
}

Credit credit_from(const WhoseOptions& options) {
    Credit credit;
    if (options.somebody_else) credit.whose = Whose::somebody_else;
    if (!options.photographer.empty()) {
        credit.whose = Whose::photographer;
        credit.name = options.photographer;
    }
    for (const std::string& text : options.licensed) credit.licensed.push_back(use_from(text));
    if (options.until) credit.until = date_from(*options.until);
    credit.line = options.no_credit ? Text("") : options.credit;
    return credit;
}

std::string credit_words(const std::optional<Credit>& credit) {
    if (!credit) return "not recorded whose it is";
    if (credit->whose == Whose::own) return "own photo";
    if (credit->whose == Whose::somebody_else) return "somebody else's, never passed on";
    std::vector<std::string> uses;
    for (const Use use : credit->licensed) uses.emplace_back(word(use));
    std::string words =
        "by " + credit->name + ", licensed for " + (uses.empty() ? "no use yet" : joined(uses));
    if (credit->until) words += " until " + iso_text(*credit->until);
    if (!credit->line) return words + ", credit line not recorded";
    return words +
           (credit->line->empty() ? ", no credit line wanted" : ", \"" + *credit->line + "\"");
}

json credit_json(const std::optional<Credit>& credit) {
    if (!credit) return {};
    json uses = json::array();
    for (const Use use : credit->licensed) uses.push_back(word(use));
    return {{"whose", word(credit->whose)},
            {"name", credit->name},
            {"licensed", uses},
            {"until", credit->until ? json(iso_text(*credit->until)) : json()},
            {"credit_line", credit->line ? json(*credit->line) : json()}};
}

Reply whose(Session& session, const WhoseOptions& options) {
    refuse_unclear(options);
    Library& library = session.library();
    const auto photos = find_photos(library, options.photos);
    if (options.own || options.somebody_else || !options.photographer.empty()) {
        const Credit credit = credit_from(options);
        library.history().record(
            "said whose " + count_text(photos.size(), "photo is", "photos are"),
            [&] { library.credits().set(ids_of(photos), credit); });
    } else if (options.credit) {
        throw WrongUse("Say whose photo it is as well: --own, or --photographer NAME.");
    }
    Reply reply{{}, {{"photos", json::array()}}};
    for (const Photo& photo : photos) {
        const auto credit = library.credits().of(photo.id);
        reply.lines.push_back(photo.file.name + ": " + credit_words(credit));
        json each = short_json(photo);
        each["credit"] = credit_json(credit);
        reply.data["photos"].push_back(std::move(each));
    }
    return reply;
}

// With what the search for faces found.
std::vector<Photo> looked_at(Library& library, const std::vector<Photo>& photos) {
    const auto decoder = make_confined_decoder();
    look_for_heads_in(library, *decoder, photos);
    std::vector<Photo> looked_at;
    for (const Photo& photo : photos) {
        looked_at.push_back(library.photos().find(photo.id).value_or(photo));
    }
    return looked_at;
}

struct PeopleOptions {
    Texts photos;
    Text face;
    Text strangers;
    Text nobody;
};

bool yes_from(const std::string& text) {
    if (text == "yes" || text == "no") return text == "yes";
    throw WrongUse("'" + text + "' is neither yes nor no.");
}

Seen changed_seen(Seen seen, const PeopleOptions& options) {
    if (options.face) {
        seen.face =
            *options.face == "unsaid" ? std::nullopt : std::optional(yes_from(*options.face));
    }
    if (options.strangers) seen.strangers = yes_from(*options.strangers);
    if (options.nobody) seen.nobody = yes_from(*options.nobody);
    return seen;
}

std::string people_words(const PhotoToShow& shown) {
    std::vector<std::string> names;
    for (const ShownPerson& person : shown.people) names.push_back(person.name);
    std::string words = names.empty() ? "nobody named" : "shows " + joined(names);
    if (shown.nobody) words = "shows nobody";
    if (shown.strangers) words += ", and somebody who is no client";
    if (shown.nobody) return words;
    return words + (shown.face_shows ? "; a face shows, or may show" : "; no face shows");
}

void say_people(Library& library, const std::vector<Photo>& photos, const PeopleOptions& options) {
    if (!options.face && !options.strangers && !options.nobody) return;
    library.history().record("said who is seen in " + count_text(photos.size(), "photo"), [&] {
        for (const Photo& photo : photos) {
            const Seen before = library.credits().seen(photo.id);
            const Seen seen = changed_seen(before, options);
            if (seen != before) library.credits().set_seen(photo.id, seen);
        }
    });
}

Reply people(Session& session, const PeopleOptions& options) {
    Library& library = session.library();
    const auto photos = looked_at(library, find_photos(library, options.photos));
    say_people(library, photos, options);
    PhotoGate gate(library);
    Reply reply{{}, {{"photos", json::array()}}};
    for (const Photo& photo : photos) {
        const PhotoToShow shown = gate.to_show(photo);
        reply.lines.push_back(photo.file.name + ": " + people_words(shown));
        const auto doubtful = doubts(photo, library.credits().seen(photo.id));
        append(reply.lines, doubtful);
        if (!doubtful.empty()) reply.outcome = Outcome::needs_attention;
        json each = short_json(photo);
        each["doubts"] = doubtful;
        each["shown"] = json::array();
        for (const ShownPerson& person : shown.people) each["shown"].push_back(person.name);
        each["face_shows"] = shown.face_shows;
        each["strangers"] = shown.strangers;
        each["nobody"] = shown.nobody;
        reply.data["photos"].push_back(std::move(each));
    }
    return reply;
}

struct MayOptions {
    std::string photo;
    std::string use;
    Text on;
};

Reply may(Session& session, const MayOptions& options) {
    Library& library = session.library();
    const Photo photo = looked_at(library, {find_photo(library, options.photo)}).front();
    const Use use = use_from(options.use);
    const Date on = options.on ? date_from(*options.on) : date_of(local_now());
    const auto [verdict, hair_only] = PhotoGate(library).way_out(photo, use, on);
    Reply reply{{photo.file.name + (verdict.may() ? " may be shown " : " may not be shown ") +
                 std::string(in_words(use)) + " on " + iso_text(on) + "."},
                {{"photo", short_json(photo)},
                 {"use", word(use)},
                 {"on", iso_text(on)},
                 {"may", verdict.may()},
                 {"against", json::array()},
                 {"under", json::array()},
                 {"hair_only", hair_only.has_value()},
                 {"caution", consent_caution}}};
    if (hair_only && verdict.may()) {
        reply.lines.push_back("  As the picture without her face that you confirmed on " +
                              iso_text(date_of(hair_only->confirmed_at)) + ".");
    }
    for (const Against& against : verdict.against) {
        reply.lines.push_back("  " + against.words);
        reply.data["against"].push_back(to_json(against));
    }
    for (const ConsentId id : verdict.under) reply.data["under"].push_back(id.value);
    const auto doubtful = problems_with_papers(library, verdict.under);
    append(reply.lines, doubtful);
    reply.data["doubts"] = doubtful;
    if (!doubtful.empty()) reply.outcome = Outcome::needs_attention;
    if (!verdict.may()) reply.outcome = Outcome::failed;
    reply.lines.emplace_back(consent_caution);
    return reply;
}

}  // namespace

void add_photo_commands(CommandSet& commands) {
    commands.group("photo", "Whose a photo is, and who is seen in it.");
    const auto options = std::make_shared<WhoseOptions>();
    auto whose_command = commands.add(
        {"photo whose", "Shows whose photos they are, or records it.",
         "qturn photo whose 14-18 --photographer 'Wren Aldous' --licensed website --until "
         "2028-12-31 --credit 'Photo: Wren Aldous'"},
        [options](Session& session) { return whose(session, *options); });
    whose_command.argument("PHOTOS", options->photos,
                           "By name, number, numbers from to, or SHA-256");
    whose_command.flag("--own", options->own, "You took them yourself");
    whose_command.option("--photographer NAME", options->photographer, "Who took them");
    whose_command.flag("--somebody-else", options->somebody_else,
                       "Somebody else's: they are never passed on");
    whose_command.option("--licensed USE", options->licensed,
                         "A use that the photographer allows; once for each");
    whose_command.option("--until YYYY-MM-DD", options->until, "The licence's last day");
    whose_command.option("--credit TEXT", options->credit, "The line that must stand beside them");
    whose_command.flag("--no-credit", options->no_credit, "The photographer wants no line");

    const auto seen = std::make_shared<PeopleOptions>();
    auto people_command = commands.add(
        {"photo people",
         "Shows who is seen in photos, or says it; clients beside the look's own are named with: "
         "qturn tag --shows",
         "qturn photo people 14-18 --face no"},
        [seen](Session& session) { return people(session, *seen); });
    people_command.argument("PHOTOS", seen->photos, "By name, number, numbers from to, or SHA-256");
    people_command.option("--face ANSWER", seen->face,
                          "Whether a face shows: yes, no, or unsaid, which counts as yes");
    people_command.option("--strangers ANSWER", seen->strangers,
                          "Whether somebody is in it who is no client: yes or no");
    people_command.option("--nobody ANSWER", seen->nobody, "Whether no person is in it: yes or no");
}

void add_may_command(CommandSet& commands) {
    const auto options = std::make_shared<MayOptions>();
    auto command = commands.add(
        {"may", "Says whether a photo may be shown for a use, or all that stands against it.",
         "qturn may IMG_0012.jpg --for website --on 2027-06-01"},
        [options](Session& session) { return may(session, *options); });
    command.argument("PHOTO", options->photo, "By name, number or SHA-256");
    command.required_option("--for USE", options->use,
                            "own record, shown in consultation, website, social media, print, "
                            "competition or teaching");
    command.option("--on YYYY-MM-DD", options->on, "On which day; today unless named");
}

}  // namespace quarterturn
