#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"

namespace quarterturn {
namespace {

constexpr const char* starts_option = "--starts YYYY-MM-DDTHH:MM";
constexpr const char* ends_option = "--ends YYYY-MM-DDTHH:MM";

struct SittingOptions {
    std::string sitting;
    std::optional<std::string> client;
    std::optional<std::string> kind;
    std::optional<std::string> starts;
    std::optional<std::string> ends;
    std::optional<std::string> wedding;
    std::optional<std::string> note;
};

Sitting with_options(Library& library, Sitting sitting, const SittingOptions& options) {
    if (options.client) sitting.client = find_client(library, *options.client).id;
    if (options.kind) sitting.kind = sitting_kind_from(*options.kind);
    if (options.starts) sitting.starts = time_from(*options.starts);
    if (options.ends) sitting.ends = time_from(*options.ends);
    if (options.wedding) sitting.wedding = find_wedding(library, *options.wedding).id;
    sitting.note = options.note.value_or(sitting.note);
    return sitting;
}

std::string hours(const Sitting& sitting) {
    return iso_text(date_of(sitting.starts)) + "  " + clock_text(sitting.starts) +
           until_text(sitting.starts, sitting.ends);
}

Reply show(Session& session, const Sitting& sitting) {
    const Names names(session.library());
    const auto looks = session.library().looks().of_sitting(sitting.id);
    const auto photos = session.library().photos().of_sitting(sitting.id);
    Reply reply{{number_text(sitting.id.value) + "  " + names.sitting(sitting.id), hours(sitting)},
                {{"sitting", to_json(sitting, names)},
                 {"looks", list_json(looks, names)},
                 {"photo_count", photos.size()}}};
    if (sitting.wedding) reply.lines.push_back("Wedding: " + names.wedding(*sitting.wedding));
    if (!sitting.note.empty()) reply.lines.push_back("Note: " + sitting.note);
    for (const Look& look : looks) reply.lines.push_back("Look: " + look.name);
    reply.lines.push_back(count_text(photos.size(), "photo"));
    return reply;
}

Reply list_sittings(Session& session) {
    const Names names(session.library());
    const auto sittings = session.library().sittings().all();
    std::vector<std::vector<std::string>> rows;
    for (const Sitting& sitting : sittings) {
        rows.push_back({number_text(sitting.id.value), hours(sitting),
                        std::string(word(sitting.kind)), names.client(sitting.client)});
    }
    if (sittings.empty())
        rows.push_back({"No sittings yet. Add one with: qturn sitting add CLIENT"});
    return {columns(rows), {{"sittings", list_json(sittings, names)}}};
}

Reply saved(Session& session, const Sitting& sitting, const std::string& said) {
    const Names names(session.library());
    return {{said + " sitting " + number_text(sitting.id.value) + ", " + names.sitting(sitting.id) +
             ". To place photos by its hours: qturn sort"},
            {{"sitting", to_json(sitting, names)}}};
}

Reply add(Session& session, const SittingOptions& options) {
    Library& library = session.library();
    Sitting sitting = with_options(library, {}, options);
    library.history().record("added the " + std::string(word(sitting.kind)),
                             [&] { sitting.id = library.sittings().add(sitting); });
    return saved(session, sitting, "Added");
}

Reply change(Session& session, const SittingOptions& options) {
    Library& library = session.library();
    const Sitting sitting = with_options(library, find_sitting(library, options.sitting), options);
    library.history().record("changed the " + std::string(word(sitting.kind)),
                             [&] { library.sittings().change(sitting); });
    return saved(session, sitting, "Changed");
}

void add_sitting_options(Command command, SittingOptions& options) {
    command.option("--kind KIND", options.kind, "consultation, trial, wedding day or model shoot");
    command.option("--wedding WEDDING", options.wedding,
                   "The wedding it is for, by name or number");
    command.option("--note TEXT", options.note, "Anything to remember");
}

}  // namespace

void add_sitting_commands(CommandSet& commands) {
    commands.group("sitting", "One appointment in the chair.");
    const auto options = std::make_shared<SittingOptions>();

    auto add_command = commands.add(
        {"sitting add", "Adds a sitting; a trial when no kind is named.",
         "qturn sitting add 'Ada Lindqvist' --starts 2026-10-03T10:00 --ends 2026-10-03T13:00"},
        [options](Session& session) { return add(session, *options); });
    add_command.argument("CLIENT", options->client, "Name or number");
    add_command.required_option(starts_option, options->starts, "When it starts");
    add_command.required_option(ends_option, options->ends, "When it ends");
    add_sitting_options(add_command, *options);

    auto change_command = commands.add(
        {"sitting change", "Changes a sitting.", "qturn sitting change 4 --ends 2026-10-03T13:30"},
        [options](Session& session) { return change(session, *options); });
    change_command.argument("SITTING", options->sitting, "Number");
    change_command.option("--client CLIENT", options->client, "Who sits in the chair");
    change_command.option(starts_option, options->starts, "When it starts");
    change_command.option(ends_option, options->ends, "When it ends");
    add_sitting_options(change_command, *options);

    commands.add({"sitting list", "Lists all sittings by time.", "qturn sitting list"},
                 list_sittings);

    auto show_command =
        commands.add({"sitting show", "Shows a sitting with its looks.", "qturn sitting show 4"},
                     [options](Session& session) {
                         return show(session, find_sitting(session.library(), options->sitting));
                     });
    show_command.argument("SITTING", options->sitting, "Number");
}

}  // namespace quarterturn
