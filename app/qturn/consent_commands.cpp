#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/consent_reply.h"
#include "app/qturn/find.h"
#include "app/qturn/names.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "indexer/disk/clock.h"

namespace quarterturn {
namespace {

using nlohmann::json;

struct ConsentOptions {
    std::string client;
    Texts uses;
    bool face = false;
    bool hair_only = false;
    Text from;
    Text until;
    Text on;
    Text how;
    std::string witness;
    std::string guardian;
    Text age;
    std::string note;
    std::string paper;
};

std::optional<Date> maybe_date_from(const Text& text) {
    return text ? std::optional(date_from(*text)) : std::nullopt;
}

Date said_on(const ConsentOptions& options) {
    return options.on ? date_from(*options.on) : date_of(local_now());
}

std::vector<Use> uses_from(const Texts& texts) {
    std::vector<Use> uses;
    for (const std::string& text : texts) {
        if (text == "all") return {all_uses.begin(), all_uses.end()};
        const Use use = use_from(text);
        if (std::ranges::find(uses, use) == uses.end()) uses.push_back(use);
    }
    if (uses.empty()) throw WrongUse("Name the use with --for, once for each, or --for all.");
    return uses;
}

ConsentEntry entry_from(const Client& client, ConsentSaid said, const ConsentOptions& options) {
    ConsentEntry entry;
    entry.client = client.id;
    entry.said = said;
    entry.said_on = said_on(options);
    entry.from = maybe_date_from(options.from);
    entry.until = maybe_date_from(options.until);
    entry.shown = options.face ? ShownAs::with_her_face : ShownAs::hair_only;
    if (options.how) entry.how = how_given_from(*options.how);
    entry.giver = options.guardian.empty() ? ConsentGiver::herself : ConsentGiver::guardian;
    entry.guardian = options.guardian;
    entry.witness = options.witness;
    if (options.age) entry.age = age_band_from(*options.age);
    entry.note = options.note;
    entry.recorded_at = local_now();
    return entry;
}

Reply entries_reply(const Client& client, const std::vector<ConsentEntry>& entries) {
    Reply reply{
        {client.name},
        {{"client", client.name}, {"client_id", client.id.value}, {"caution", consent_caution}}};
    add_entries(reply, entries);
    return reply;
}

std::vector<ConsentId> ids_in(const std::vector<ConsentEntry>& entries) {
    std::vector<ConsentId> ids;
    for (const ConsentEntry& entry : entries) ids.push_back(entry.id);
    return ids;
}

Reply record(Library& library, const Client& client, const ConsentEntry& entry,
             const std::vector<Use>& uses, const std::string& paper) {
    const auto entries = record_said(library, {{entry, uses}}, paper);
    Reply reply = entries_reply(client, entries);
    if (entry.until && *entry.until < date_of(entry.recorded_at)) {
        reply.lines.push_back("It ended on " + iso_text(*entry.until) +
                              " already: today it allows nothing.");
    }
    reply.lines.emplace_back(consent_caution);
    return reply;
}

Reply grant(Session& session, const ConsentOptions& options) {
    if (options.face == options.hair_only) {
        throw WrongUse("Say how she may be shown: --face, or --hair-only.");
    }
    if (!options.how)
        throw WrongUse("Say how it was given: --how 'signed form', message or spoken.");
    Library& library = session.library();
    const Client client = find_client(library, options.client);
    return record(library, client, entry_from(client, ConsentSaid::granted, options),
                  uses_from(options.uses), options.paper);
}

// It stays in the history, where nothing can be mended.
void refuse_unless_told_how(const ConsentOptions& options) {
    if (options.how) return;
    throw WrongUse("Say how she said so: --how 'signed form', message or spoken.");
}

Reply decline(Session& session, const ConsentOptions& options) {
    refuse_unless_told_how(options);
    Library& library = session.library();
    const Client client = find_client(library, options.client);
    return record(library, client, entry_from(client, ConsentSaid::declined, options),
                  uses_from(options.uses), options.paper);
}

// One file may hold several photos, each of which is an export.
using FileWithExports = std::pair<std::string, std::vector<std::string>>;

// Those of hers that went out under what she has withdrawn now.
void add_take_downs(Reply& reply, Library& library, const std::vector<Use>& uses,
                    const std::vector<ConsentId>& hers) {
    reply.data["to_take_down"] = json::array();
    std::vector<FileWithExports> exports_of;
    for (const ToTakeDown& task : ledger_tasks(library, date_of(local_now()), 0).to_take_down) {
        const Exported& out = task.exported;
        const bool under_hers = std::ranges::any_of(
            out.under, [&](ConsentId id) { return std::ranges::find(hers, id) != hers.end(); });
        if (!under_hers || std::ranges::find(uses, out.use) == uses.end()) continue;
        const auto known = std::ranges::find(exports_of, out.file, &FileWithExports::first);
        auto& exports = known == exports_of.end()
                            ? exports_of.emplace_back(out.file, std::vector<std::string>{}).second
                            : known->second;
        exports.push_back(number_text(out.id.value));
        reply.data["to_take_down"].push_back(out.id.value);
        reply.outcome = Outcome::needs_attention;
    }
    for (const auto& [file, exports] : exports_of) {
        reply.lines.push_back("To take down: " + file + " (" +
                              (exports.size() == 1 ? "export " : "exports ") + joined(exports) +
                              ')');
    }
}

Reply withdraw(Session& session, const ConsentOptions& options) {
    refuse_unless_told_how(options);
    Library& library = session.library();
    const Client client = find_client(library, options.client);
    const ConsentEntry entry = entry_from(client, ConsentSaid::withdrawn, options);
    const auto standing = uses_to_withdraw(library, client.id);
    std::vector<Use> uses = options.uses.empty() ? standing : uses_from(options.uses);
    std::erase_if(uses,
                  [&](Use use) { return std::ranges::find(standing, use) == standing.end(); });
    if (uses.empty()) {
        throw StoreError("There is nothing to withdraw: " + client.name +
                         " has granted nothing of it. See: qturn consent show");
    }
    Reply reply = record(library, client, entry, uses, options.paper);
    add_take_downs(reply, library, uses, ids_in(library.consents().of(client.id)));
    return reply;
}

void add_papers(Reply& reply, Library& library, const std::vector<ConsentEntry>& entries) {
    reply.data["problems"] = json::array();
    std::vector<std::string> checked;
    for (const ConsentEntry& entry : entries) {
        for (const ConsentPaper& paper : entry.papers) {
            if (std::ranges::find(checked, paper.path) != checked.end()) continue;
            checked.push_back(paper.path);
            const std::string problem = problem_with_paper(library, paper);
            if (problem.empty()) continue;
            reply.lines.push_back(problem);
            reply.data["problems"].push_back(problem);
            reply.outcome = Outcome::needs_attention;
        }
    }
}

Reply show(Session& session, const ConsentOptions& options) {
    Library& library = session.library();
    const Client client = find_client(library, options.client);
    const Date on = said_on(options);
    const auto entries = library.consents().of(client.id);
    const auto age = age_on(entries, on);
    Reply reply{{client.name + ", on " + iso_text(on)},
                {{"client", client.name},
                 {"client_id", client.id.value},
                 {"on", iso_text(on)},
                 {"age", age ? json(word(*age)) : json()},
                 {"child", is_child_on(entries, on)},
                 {"uses", json::array()},
                 {"caution", consent_caution}}};
    if (age) reply.lines.push_back("Aged " + std::string(word(*age)) + " when it was told last.");
    std::vector<std::vector<std::string>> rows;
    for (const Use use : all_uses) {
        const StandingConsent consent = consent_on(entries, use, on);
        rows.push_back({"  " + std::string(word(use)), standing_words(consent)});
        reply.data["uses"].push_back({{"use", word(use)},
                                      {"standing", word(consent.standing)},
                                      {"entry", consent.entry ? to_json(*consent.entry) : json()}});
    }
    append(reply.lines, columns(rows));
    add_papers(reply, library, entries);
    reply.lines.emplace_back("What was not asked counts as no.");
    return reply;
}

Reply history(Session& session, const ConsentOptions& options) {
    Library& library = session.library();
    const Client client = find_client(library, options.client);
    const auto entries = library.consents().of(client.id);
    Reply reply = entries_reply(client, entries);
    if (entries.empty()) reply.lines.emplace_back("Nothing is recorded, and that means no.");
    add_papers(reply, library, entries);
    return reply;
}

void add_said_options(Command& command, ConsentOptions& options) {
    command.argument("CLIENT", options.client, "Name or number");
    command.option("--for USE", options.uses,
                   "own record, shown in consultation, website, social media, print, competition, "
                   "teaching, or all; once for each");
    command.option("--on YYYY-MM-DD", options.on, "The day it was said; today unless named");
    command.option("--how HOW", options.how, "signed form, message or spoken");
    command.option("--witness NAME", options.witness, "Who heard it, where it was spoken");
    command.option("--guardian NAME", options.guardian,
                   "Her parent or guardian, where that person said it for a child");
    command.option("--age AGE", options.age,
                   "How old she is: 14 or under, 15, 16, 17, 18 or over, 25 or over");
    command.option("--note TEXT", options.note, "Anything to remember");
    command.option("--attach FILE", options.paper, "The scan or the message, copied in");
}

}  // namespace

void add_consent_commands(CommandSet& commands) {
    commands.group("consent", "What a client allows, for which use; nothing recorded means no.");
    const auto options = std::make_shared<ConsentOptions>();

    auto show_command =
        commands.add({"consent show", "Shows what a client allows, use by use.",
                      "qturn consent show 'Ada Lindqvist'"},
                     [options](Session& session) { return show(session, *options); });
    show_command.argument("CLIENT", options->client, "Name or number");
    show_command.option("--on YYYY-MM-DD", options->on, "On which day; today unless named");

    auto grant_command = commands.add(
        {"consent grant", "Records what a client allows.",
         "qturn consent grant 'Ada Lindqvist' --for website --for print --hair-only --how "
         "'signed form' --until 2028-11-07 --attach scan.pdf"},
        [options](Session& session) { return grant(session, *options); });
    add_said_options(grant_command, *options);
    grant_command.flag("--face", options->face, "She may be shown with her face");
    grant_command.flag("--hair-only", options->hair_only, "Only her hair may be shown");
    grant_command.option("--from YYYY-MM-DD", options->from, "The first day it holds");
    grant_command.option("--until YYYY-MM-DD", options->until, "The last day it holds");

    auto decline_command =
        commands.add({"consent decline", "Records what a client does not want.",
                      "qturn consent decline 'Ada Lindqvist' --for 'social media' --how message"},
                     [options](Session& session) { return decline(session, *options); });
    add_said_options(decline_command, *options);

    auto withdraw_command = commands.add(
        {"consent withdraw",
         "Records that a client takes back what she allowed, for one use or for all, and says what "
         "is out there to be taken down.",
         "qturn consent withdraw 'Ada Lindqvist' --for website --how message"},
        [options](Session& session) { return withdraw(session, *options); });
    add_said_options(withdraw_command, *options);

    auto history_command =
        commands.add({"consent history", "Lists all that a client ever said of it, oldest first.",
                      "qturn consent history 'Ada Lindqvist'"},
                     [options](Session& session) { return history(session, *options); });
    history_command.argument("CLIENT", options->client, "Name or number");
}

}  // namespace quarterturn
