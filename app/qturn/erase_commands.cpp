#include <unistd.h>

#include <algorithm>
#include <iostream>

#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"
#include "indexer/disk/clock.h"
#include "indexer/erasure/erase.h"
#include "indexer/erasure/retention.h"
#include "indexer/store/erasure_table.h"
#include "indexer/store/library_settings.h"

namespace quarterturn {
namespace {

using nlohmann::json;

std::string what_went(const Erasure& erasure) {
    return count_text(static_cast<std::size_t>(erasure.looks), "look") + " and " +
           count_text(static_cast<std::size_t>(erasure.photos), "photo");
}

struct EraseOptions {
    std::string what;  // a client, or a look
    std::string yes_erase;
    bool with_shared = false;
    bool show_only = false;
};

json erasure_json(const Erasure& erasure) {
    return {{"id", erasure.id.value},
            {"on", iso_text(erasure.on)},
            {"photos", erasure.photos},
            {"looks", erasure.looks},
            {"finished", erasure.finished}};
}

json places_json(const std::vector<NamedPlace>& places) {
    json all = json::array();
    for (const NamedPlace& place : places) {
        all.push_back({{"place", place.place},
                       {"said", place.said},
                       {"goes", place.goes},
                       {"signed_off", place.signed_off}});
    }
    return all;
}

Reply plan_reply(Library& library, const ErasurePlan& plan) {
    const NamedByOthers named = named_by_others(library, plan);
    json out_there = json::array();
    for (const Exported& exported : plan.out_there) {
        out_there.push_back({{"id", exported.id.value}, {"file", exported.file}});
    }
    json weddings = json::array();
    for (const Wedding& wedding : plan.weddings) weddings.push_back(wedding.name);
    json backups = json::array();
    for (const Backup& backup : plan.backups) backups.push_back(backup.folder.string());
    Reply reply{erasure_words(library, plan),
                {{"client", plan.client.name},
                 {"client_id", plan.client.id.value},
                 {"look", plan.only ? json(plan.only->name) : json()},
                 {"look_id", plan.only ? json(plan.only->id.value) : json()},
                 {"photos", short_list_json(plan.photos)},
                 {"shown_with_others", short_list_json(plan.others_shown)},
                 {"stay", short_list_json(plan.shared)},
                 {"weddings", weddings},
                 {"out_there", out_there},
                 {"backups", backups},
                 {"named", places_json(named.places)},
                 {"alike", named.alike},
                 {"erasure", nullptr},
                 {"left", json::array()},
                 {"caution", erasure_caution}}};
    for (const std::string& file : files_out_there(plan)) {
        reply.lines.push_back("  Out there: " + file);
    }
    append(reply.lines, naming_words(named));
    return reply;
}

// At a terminal she is asked; a program says it with --yes-erase.
std::string name_typed_again(const EraseOptions& options, const Reply& plan) {
    if (!options.yes_erase.empty() || isatty(STDIN_FILENO) != 1) return options.yes_erase;
    for (const std::string& line : plan.lines) std::cerr << safe_text(line) << '\n';
    std::cerr << "Type the name again to erase for good: " << std::flush;
    std::string name;
    std::getline(std::cin, name);
    return name;
}

// What was found beforehand stands among the lines already.
void add_unless_said(std::vector<std::string>& lines, const std::vector<std::string>& more) {
    for (const std::string& line : more) {
        if (std::ranges::find(lines, line) == lines.end()) lines.push_back(line);
    }
}

Reply erase(Library& library, const ErasurePlan& plan, const EraseOptions& options) {
    const std::string& name = name_of_what_goes(plan);
    Reply reply = plan_reply(library, plan);
    if (options.show_only) {
        const std::vector<std::string> left = left_beforehand(library, plan);
        reply.data["left"] = left;
        append(reply.lines, left);
        reply.lines.emplace_back("Nothing was erased.");
        return reply;
    }
    if (name_typed_again(options, reply) != name) {
        throw WrongUse(
            "Nothing was erased: the name was not typed again as it is recorded. Look "
            "first with --show-only, then say --yes-erase '" +
            name + "'.");
    }
    const Erased erased = erase(library, plan, date_of(local_now()));
    reply.lines.erase(reply.lines.begin());  // what was to go
    reply.lines.insert(reply.lines.begin(),
                       std::string(erased.erasure.finished ? "Erased."
                                                           : "Erased from the records, but not "
                                                             "finished.") +
                           " What stays is that " + what_went(erased.erasure) + " went on " +
                           iso_text(erased.erasure.on) + ".");
    reply.data["erasure"] = erasure_json(erased.erasure);
    reply.data["left"] = erased.left;
    reply.data["alike"] = erased.alike;
    add_unless_said(reply.lines, erased.left);
    add_unless_said(reply.lines, erased.alike);
    reply.lines.emplace_back(erasure_caution);
    if (!erased.left.empty() || !erased.alike.empty() || !plan.out_there.empty() ||
        !plan.backups.empty())
        reply.outcome = Outcome::needs_attention;
    return reply;
}

Reply erase_client(Session& session, const EraseOptions& options) {
    Library& library = session.library();
    const auto shared = options.with_shared ? SharedPhotos::go : SharedPhotos::stay;
    return erase(library, plan_erasure(library, find_client(library, options.what).id, shared),
                 options);
}

Reply erase_look(Session& session, const EraseOptions& options) {
    Library& library = session.library();
    return erase(library, plan_look_erasure(library, find_look(library, options.what).id), options);
}

std::string not_finished(bool all_removed) {
    return all_removed ? "; not finished: close other programs, and list again"
                       : "; not finished: it goes on by itself when these files can be removed";
}

struct ErasuresOptions {
    bool looked_at = false;
};

Reply list_erasures(Session& session, const ErasuresOptions& options) {
    if (options.looked_at) forget_left_by_erasures(session.library());
    ErasureTable erasures(session.library().database());
    const std::vector<std::string> to_remove = erasures.files_left();
    Reply reply{{},
                {{"erasures", json::array()}, {"to_remove", to_remove}, {"left", json::array()}}};
    for (const Erasure& erasure : erasures.all()) {
        reply.lines.push_back(iso_text(erasure.on) + "  " + what_went(erasure) +
                              (erasure.finished ? "" : not_finished(to_remove.empty())));
        reply.data["erasures"].push_back(erasure_json(erasure));
        for (const Backup& backup : session.library().backups().before_erasure(erasure.id)) {
            reply.lines.push_back("  may still be in the backup in " + place_words(backup));
        }
    }
    for (const std::string& path : to_remove) {
        reply.lines.push_back("  still to be removed: " + path);
    }
    for (const ErasureLeft& left : left_by_erasures(session.library())) {
        reply.lines.push_back("  left on " + iso_text(left.erased_on) + ": " + left.said.words);
        reply.data["left"].push_back(left.said.words);
    }
    if (!to_remove.empty() || !reply.data["left"].empty()) {
        reply.outcome = Outcome::needs_attention;
    }
    if (reply.lines.empty()) reply.lines.emplace_back("Nothing was erased.");
    return reply;
}

struct RetentionOptions {
    Text on;
};

Reply retention(Session& session, const RetentionOptions& options) {
    Library& library = session.library();
    const Date on = options.on ? date_from(*options.on) : date_of(local_now());
    const auto years = keep_looks_years(library.settings());
    Reply reply{{},
                {{"on", iso_text(on)},
                 {"years", years ? json(*years) : json()},
                 {"proposed", json::array()}}};
    for (const PastKeeping& past : past_keeping(library, on)) {
        reply.lines.push_back(past.client.name + (past.only ? ", " + past.only->name : "") +
                              ": last here on " + iso_text(past.last) + ", " +
                              count_text(past.looks, "look") + ", " +
                              count_text(past.photos, "photo"));
        reply.data["proposed"].push_back(
            {{"client", past.client.name},
             {"client_id", past.client.id.value},
             {"look", past.only ? json(past.only->name) : json()},
             {"look_id", past.only ? json(past.only->id.value) : json()},
             {"last", iso_text(past.last)},
             {"looks", past.looks},
             {"photos", past.photos}});
    }
    if (!years) {
        reply.lines.emplace_back(
            "No time is set: looks are kept until you erase them. Set one with: qturn settings "
            "'keep looks years' 5");
    } else if (reply.lines.empty()) {
        reply.lines.push_back("Nobody was here last more than " +
                              count_text(static_cast<std::size_t>(*years), "year") + " ago.");
    } else {
        reply.lines.insert(reply.lines.begin(),
                           "Kept for longer than " +
                               count_text(static_cast<std::size_t>(*years), "year") +
                               ", as you wanted to keep looks:");
        reply.lines.emplace_back(
            "Nothing is erased by itself. Erase with: qturn client erase, or qturn look erase");
        reply.outcome = Outcome::needs_attention;
    }
    return reply;
}

void add_erase_options(Command& command, EraseOptions& options) {
    command.option("--yes-erase NAME", options.yes_erase,
                   "The name again, in place of the question");
    command.flag("--show-only", options.show_only, "Say what would go and what would stay");
}

}  // namespace

void add_erase_commands(CommandSet& commands) {
    const auto options = std::make_shared<EraseOptions>();
    auto client_command = commands.add(
        {"client erase",
         "Erases a client for good: photos, looks, records and the words she was found by. Asks "
         "for her name again.",
         "qturn client erase 'Ada Lindqvist' --yes-erase 'Ada Lindqvist'"},
        [options](Session& session) { return erase_client(session, *options); });
    client_command.argument("CLIENT", options->what, "Name or number");
    add_erase_options(client_command, *options);
    client_command.flag("--with-shared", options->with_shared,
                        "Photos of other clients' looks that show her go as well");

    const auto erasures_options = std::make_shared<ErasuresOptions>();
    auto erasures_command = commands.add(
        {"client erasures", "Lists when something was erased, and nothing of whom.",
         "qturn client erasures"},
        [erasures_options](Session& session) { return list_erasures(session, *erasures_options); });
    erasures_command.flag("--looked-at", erasures_options->looked_at,
                          "You have looked at all that was left: name it no more");

    const auto retention_options = std::make_shared<RetentionOptions>();
    auto retention_command = commands.add(
        {"client retention",
         "Proposes for erasure the clients who were here last longer ago than looks are kept "
         "(setting 'keep "
         "looks years'), and of others the looks that are as old.",
         "qturn client retention"},
        [retention_options](Session& session) { return retention(session, *retention_options); });
    retention_command.option("--on YYYY-MM-DD", retention_options->on,
                             "On which day; today unless named");
}

void add_look_erase_command(CommandSet& commands) {
    const auto options = std::make_shared<EraseOptions>();
    auto look_command =
        commands.add({"look erase",
                      "Erases one look for good: its photos, recipe and sign-offs; all else of the "
                      "client stays. "
                      "Asks for its name again.",
                      "qturn look erase 'Low twisted bun' --yes-erase 'Low twisted bun'"},
                     [options](Session& session) { return erase_look(session, *options); });
    look_command.argument("LOOK", options->what, "Name or number");
    add_erase_options(look_command, *options);
}

}  // namespace quarterturn
