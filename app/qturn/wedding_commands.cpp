#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"

namespace quarterturn {
namespace {

struct WeddingOptions {
    std::string wedding;
    std::optional<std::string> name;
    std::optional<std::string> date;
    std::optional<std::string> venue;
    std::optional<std::string> ready_by;
    std::vector<std::string> party;
};

// "Ada Lindqvist=bride"
PartyMember member_from(Library& library, const std::string& text) {
    const std::size_t at = text.rfind('=');
    if (at == std::string::npos) {
        throw WrongUse("'" + text + "' names no role. Write client and role, as in 'Ada=bride'.");
    }
    return {find_client(library, text.substr(0, at)).id, text.substr(at + 1)};
}

Wedding with_options(Library& library, Wedding wedding, const WeddingOptions& options) {
    wedding.name = options.name.value_or(wedding.name);
    wedding.venue = options.venue.value_or(wedding.venue);
    if (options.date) wedding.date = date_from(*options.date);
    if (options.ready_by) wedding.ready_by = clock_from(*options.ready_by);
    if (!options.party.empty()) wedding.party.clear();
    for (const std::string& text : options.party) {
        wedding.party.push_back(member_from(library, text));
    }
    return wedding;
}

Reply show(Session& session, const Wedding& wedding) {
    const Names names(session.library());
    Reply reply{
        {number_text(wedding.id.value) + "  " + wedding.name, "Date: " + iso_text(wedding.date)},
        {{"wedding", to_json(wedding, names)}}};
    if (!wedding.venue.empty()) reply.lines.push_back("Venue: " + wedding.venue);
    if (!wedding.ready_by.empty()) reply.lines.push_back("Ready by: " + wedding.ready_by);
    for (const PartyMember& member : wedding.party) {
        reply.lines.push_back(names.client(member.client) + ", " + member.role);
    }
    return reply;
}

Reply list_weddings(Session& session) {
    const auto weddings = session.library().weddings().all();
    std::vector<std::vector<std::string>> rows;
    for (const Wedding& wedding : weddings) {
        rows.push_back({number_text(wedding.id.value), iso_text(wedding.date), wedding.name,
                        wedding.venue, count_text(wedding.party.size(), "client")});
    }
    if (weddings.empty()) rows.push_back({"No weddings yet. Add one with: qturn wedding add NAME"});
    return {columns(rows), {{"weddings", list_json(weddings, Names(session.library()))}}};
}

Reply saved(Session& session, const Wedding& wedding, const std::string& said) {
    return {{said + " wedding " + number_text(wedding.id.value) + ", " + wedding.name + "."},
            {{"wedding", to_json(wedding, Names(session.library()))}}};
}

Reply add(Session& session, const WeddingOptions& options) {
    Library& library = session.library();
    Wedding wedding = with_options(library, {}, options);
    library.history().record("added the wedding " + wedding.name,
                             [&] { wedding.id = library.weddings().add(wedding); });
    return saved(session, wedding, "Added");
}

Reply change(Session& session, const WeddingOptions& options) {
    Library& library = session.library();
    const Wedding wedding = with_options(library, find_wedding(library, options.wedding), options);
    library.history().record("changed the wedding " + wedding.name,
                             [&] { library.weddings().change(wedding); });
    return saved(session, wedding, "Changed");
}

void add_party_options(Command command, WeddingOptions& options) {
    command.option("--venue TEXT", options.venue, "Where it is");
    command.option("--ready-by HH:MM", options.ready_by, "When she must be ready");
    command.option("--party CLIENT=ROLE", options.party,
                   "A client and her role; once for each, and together they are the whole party");
}

}  // namespace

void add_wedding_commands(CommandSet& commands) {
    commands.group("wedding", "A date, a venue, a ready-by time and the party.");
    const auto options = std::make_shared<WeddingOptions>();

    auto add_command = commands.add(
        {"wedding add", "Adds a wedding.",
         "qturn wedding add 'Lindqvist and Berg' --date 2026-11-07 --party 'Ada Lindqvist=bride'"},
        [options](Session& session) { return add(session, *options); });
    add_command.argument("NAME", options->name, "What you call it");
    add_command.required_option("--date YYYY-MM-DD", options->date, "The day");
    add_party_options(add_command, *options);

    auto change_command = commands.add(
        {"wedding change", "Changes a wedding.", "qturn wedding change 2 --ready-by 12:30"},
        [options](Session& session) { return change(session, *options); });
    change_command.argument("WEDDING", options->wedding, "Name or number");
    change_command.option("--name NAME", options->name, "What you call it");
    change_command.option("--date YYYY-MM-DD", options->date, "The day");
    add_party_options(change_command, *options);

    commands.add({"wedding list", "Lists all weddings.", "qturn wedding list"}, list_weddings);

    auto show_command =
        commands.add({"wedding show", "Shows a wedding with its party.", "qturn wedding show 2"},
                     [options](Session& session) {
                         return show(session, find_wedding(session.library(), options->wedding));
                     });
    show_command.argument("WEDDING", options->wedding, "Name or number");
}

}  // namespace quarterturn
