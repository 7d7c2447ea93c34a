#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/drawing.h"
#include "app/qturn/find.h"
#include "app/qturn/names.h"
#include "app/qturn/out_file.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "indexer/disk/clock.h"
#include "indexer/looks/consent_json.h"
#include "indexer/looks/consents.h"
#include "indexer/sheet/ledger_sheet.h"
#include "indexer/store/library_settings.h"
#include "indexer/worker/confined.h"
#include "ui/painter/paint.h"

namespace quarterturn {

namespace {

using nlohmann::json;

struct LedgerOptions {
    std::string number;
    Texts numbers;
    std::string words;
    Text use;
    std::string client;
    bool out_there = false;
    Text on;
    std::string note;
    std::optional<int> within;
    std::string out;
    Text paper;
    bool replace = false;
};

ExportId export_from(std::string text) {
    if (text.starts_with('#')) text.erase(0, 1);
    return ExportId{number_from(text, text)};
}

Exported export_there(Library& library, ExportId id) {
    if (auto found = library.ledger().find(id)) return std::move(*found);
    throw WrongUse("There is no export " + number_text(id.value) +
                   " in the ledger. See: qturn ledger list");
}

std::string export_line(const Exported& exported) {
    return number_text(exported.id.value) + "  " + iso_text(date_of(exported.at)) + "  " +
           std::string(word(exported.use)) + "  " + exported.photo_name + "  " + exported.file;
}

void add_export(Reply& reply, const Exported& exported) {
    reply.lines.push_back(export_line(exported));
    for (const std::string& place : exported.places) reply.lines.push_back("      at " + place);
    if (!exported.taken_down) return;
    const TakenDown& down = *exported.taken_down;
    reply.lines.push_back("      taken down on " + iso_text(down.on) +
                          (down.note.empty() ? "" : ": " + down.note));
}

// Whether it went out under a consent of hers.
bool is_under(Library& library, const Exported& exported, ClientId client) {
    return std::ranges::any_of(exported.under, [&](ConsentId id) {
        const auto entry = library.consents().find(id);
        return entry && entry->client == client;
    });
}

std::vector<Exported> wanted_exports(Library& library, const LedgerOptions& options) {
    const auto use = options.use ? std::optional(use_from(*options.use)) : std::nullopt;
    const auto client = options.client.empty()
                            ? std::nullopt
                            : std::optional(find_client(library, options.client).id);
    std::vector<Exported> exports = library.ledger().all();
    std::erase_if(exports, [&](const Exported& exported) {
        return (use && exported.use != *use) || (client && !is_under(library, exported, *client)) ||
               (options.out_there && exported.taken_down);
    });
    return exports;
}

Reply list_ledger(Session& session, const LedgerOptions& options) {
    Reply reply{{}, {{"exports", json::array()}}};
    for (const Exported& exported : wanted_exports(session.library(), options)) {
        add_export(reply, exported);
        reply.data["exports"].push_back(to_json(exported));
    }
    if (reply.lines.empty()) reply.lines.emplace_back("Nothing of it went out.");
    return reply;
}

Reply print_ledger(Session& session, const LedgerOptions& options) {
    refuse_bad_pdf(session, options.out, options.replace);
    Library& library = session.library();
    const auto exports = wanted_exports(library, options);
    const Drawing drawing;
    const auto decoder = make_confined_decoder();
    const auto ruler = make_text_ruler();
    const Paper paper =
        options.paper ? paper_from(*options.paper) : usual_paper(library.settings());
    const Document pages = ledger_sheet(
        exports, *ruler, {paper, date_of(local_now()), business_words(library.settings())});
    write_pdf(pages, *decoder, library.disk(), options.out);
    return {{"Written: " + options.out},
            {{"file", options.out}, {"pages", pages.pages.size()}, {"exports", exports.size()}}};
}

void add_ledger_filters(Command& command, LedgerOptions& options) {
    command.option("--for USE", options.use, "Only what went out for this use");
    command.option("--client CLIENT", options.client, "Only what she had allowed");
    command.flag("--out-there", options.out_there, "Only what was not taken down");
}

Reply tasks(Session& session, const LedgerOptions& options) {
    Library& library = session.library();
    const Date on = options.on ? date_from(*options.on) : date_of(local_now());
    const LedgerTasks todo = ledger_tasks(library, on, options.within.value_or(usual_days_before));
    Reply reply{{},
                {{"on", iso_text(on)}, {"to_take_down", json::array()}, {"ending", json::array()}}};
    for (const ToTakeDown& task : todo.to_take_down) {
        add_export(reply, task.exported);
        for (const std::string& why : task.why) reply.lines.push_back("      " + why);
        json each = to_json(task.exported);
        each["why"] = task.why;
        reply.data["to_take_down"].push_back(std::move(each));
    }
    if (!todo.to_take_down.empty()) {
        reply.lines.insert(
            reply.lines.begin(),
            "To take down: " + count_text(todo.to_take_down.size(), "picture") + ".");
        reply.outcome = Outcome::needs_attention;
    }
    for (const EndingSoon& ending : todo.ending_soon) {
        reply.lines.push_back(ending.words);
        reply.data["ending"].push_back({{"on", iso_text(ending.on)}, {"words", ending.words}});
    }
    if (reply.lines.empty()) {
        reply.lines.emplace_back("Nothing has to be taken down, and nothing ends soon.");
    }
    return reply;
}

Reply one_export(Library& library, ExportId id) {
    const Exported exported = export_there(library, id);
    Reply reply{{}, {{"export", to_json(exported)}}};
    add_export(reply, exported);
    return reply;
}

Reply place(Session& session, const LedgerOptions& options) {
    Library& library = session.library();
    const ExportId id = export_there(library, export_from(options.number)).id;
    note_place(library, id, options.words);
    return one_export(library, id);
}

// "41", "#41", and of "41-58" those that are out there still.
std::vector<ExportId> exports_named(Library& library, const Texts& numbers) {
    std::vector<ExportId> ids;
    for (const std::string& text : numbers) {
        const std::size_t dash = text.find('-', 1);
        const ExportId first = export_there(library, export_from(text.substr(0, dash))).id;
        const ExportId last = dash == std::string::npos
                                  ? first
                                  : export_there(library, export_from(text.substr(dash + 1))).id;
        if (last < first)
            throw WrongUse("'" + text + "' runs backwards: write it from low to high.");
        for (ExportId id = first; id <= last; ++id.value) {
            const auto found = library.ledger().find(id);
            const bool done = found && found->taken_down && first != last;
            if (found && !done) ids.push_back(id);
        }
    }
    if (ids.empty()) throw StoreError("All of them were taken down before.");
    return ids;
}

Reply taken_down(Session& session, const LedgerOptions& options) {
    Library& library = session.library();
    const std::vector<ExportId> ids = exports_named(library, options.numbers);
    const Date today = date_of(local_now());
    const Date on = options.on ? date_from(*options.on) : today;
    if (on > today) throw WrongUse(iso_text(on) + " has not come yet: tick it off on the day.");
    tick_off_all(library, ids, {on, options.note});
    Reply reply{{}, {{"exports", json::array()}}};
    for (const ExportId id : ids) {
        const Exported exported = export_there(library, id);
        add_export(reply, exported);
        reply.data["exports"].push_back(to_json(exported));
    }
    return reply;
}

}  // namespace

void add_ledger_commands(CommandSet& commands) {
    commands.group("ledger", "What went out, and what has to be taken down.");
    const auto options = std::make_shared<LedgerOptions>();

    auto list_command =
        commands.add({"ledger list", "Lists what went out, oldest first.",
                      "qturn ledger list --client 'Ada Lindqvist' --out-there"},
                     [options](Session& session) { return list_ledger(session, *options); });
    add_ledger_filters(list_command, *options);

    auto print_command = commands.add(
        {"ledger print", "Writes what went out as PDF.", "qturn ledger print --out ledger.pdf"},
        [options](Session& session) { return print_ledger(session, *options); });
    add_ledger_filters(print_command, *options);
    print_command.required_option("--out FILE", options->out, "The PDF to write");
    print_command.option("--paper SIZE", options->paper,
                         "a4, a3, a5 or letter; unless named, the setting 'paper'");
    print_command.flag("--replace", options->replace, "Write over a file that is there");

    auto tasks_command = commands.add(
        {"ledger tasks",
         "Lists what is out there and may not be any longer, and which consents and licences end "
         "soon.",
         "qturn ledger tasks --within 90"},
        [options](Session& session) { return tasks(session, *options); });
    tasks_command.option("--within DAYS", options->within, "How soon; 60 days unless named");
    tasks_command.option("--on YYYY-MM-DD", options->on, "On which day; today unless named");

    auto place_command =
        commands.add({"ledger place", "Notes where an exported picture was put.",
                      "qturn ledger place 12 'gallery, third page'"},
                     [options](Session& session) { return place(session, *options); });
    place_command.argument("EXPORT", options->number, "Its number");
    place_command.argument("WHERE", options->words, "In your words");

    auto down_command =
        commands.add({"ledger taken-down", "Ticks off that exported pictures were taken down.",
                      "qturn ledger taken-down 12 41-58 --on 2027-01-15"},
                     [options](Session& session) { return taken_down(session, *options); });
    down_command.argument("EXPORTS", options->numbers, "By number, or numbers from to");
    down_command.option("--on YYYY-MM-DD", options->on, "The day; today unless named");
    down_command.option("--note TEXT", options->note, "Anything to remember");
}

}  // namespace quarterturn
