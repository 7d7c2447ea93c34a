#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/parse.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"
#include "indexer/looks/look_state.h"
#include "indexer/looks/sign_off.h"

namespace quarterturn {
namespace {

struct LookOptions {
    std::string look;
    std::optional<std::string> client;
    std::optional<std::string> name;
    std::optional<std::string> worn;
    std::optional<std::string> wedding;
    std::vector<std::string> sittings;
};

Look with_options(Library& library, Look look, const LookOptions& options) {
    if (options.client) look.client = find_client(library, *options.client).id;
    look.name = options.name.value_or(look.name);
    if (options.worn) look.worn = worn_from(*options.worn);
    if (options.wedding) look.wedding = find_wedding(library, *options.wedding).id;
    if (!options.sittings.empty()) look.sittings.clear();
    for (const std::string& number : options.sittings) {
        look.sittings.push_back(find_sitting(library, number).id);
    }
    return look;
}

std::string sign_off_text(const LookState& state) {
    if (!state.sign_off) return "Not signed off.";
    return "Signed off on " + iso_text(date_of(state.sign_off->signed_at)) +
           (state.changes_since.empty() ? "." : ", and changed since:");
}

nlohmann::json sign_off_json(const LookState& state) {
    if (!state.sign_off) return nullptr;
    return {{"signed_at", iso_text(state.sign_off->signed_at)},
            {"changes_since", state.changes_since}};
}

Reply show(Session& session, const Look& look) {
    const Names names(session.library());
    LookState state = look_state(session.library(), look.id);
    append(state.changes_since, file_problems(session.library(), state));
    Reply reply{{number_text(look.id.value) + "  " + look.name + ", " + state.client.name,
                 "Worn: " + std::string(word(look.worn))},
                {{"look", to_json(look, names)},
                 {"photo_count", state.photos.size()},
                 {"coverage_complete", state.coverage.complete},
                 {"sign_off", sign_off_json(state)}}};
    for (const SittingId sitting : look.sittings) {
        reply.lines.push_back("Sitting " + number_text(sitting.value) + "  " +
                              names.sitting(sitting));
    }
    append(reply.lines, {count_text(state.photos.size(), "photo"), state.coverage.next_shot,
                         sign_off_text(state)});
    append(reply.lines, state.changes_since);
    return reply;
}

Reply list_looks(Session& session) {
    const Names names(session.library());
    const auto looks = session.library().looks().all();
    std::vector<std::vector<std::string>> rows;
    for (const Look& look : looks) {
        rows.push_back({number_text(look.id.value), look.name, names.client(look.client),
                        std::string(word(look.worn))});
    }
    if (looks.empty()) rows.push_back({"No looks yet. Add one with: qturn look add CLIENT NAME"});
    return {columns(rows), {{"looks", list_json(looks, names)}}};
}

Reply saved(Session& session, const Look& look, const std::string& said) {
    return {{said + " look " + number_text(look.id.value) + ", " + look.name + "."},
            {{"look", to_json(look, Names(session.library()))}}};
}

Reply add(Session& session, const LookOptions& options) {
    Library& library = session.library();
    Look look = with_options(library, {}, options);
    library.history().record("added the look " + look.name,
                             [&] { look.id = library.looks().add(look); });
    return saved(session, look, "Added");
}

Reply change(Session& session, const LookOptions& options) {
    Library& library = session.library();
    const Look look = with_options(library, find_look(library, options.look), options);
    library.history().record("changed the look " + look.name,
                             [&] { library.looks().change(look); });
    return saved(session, look, "Changed");
}

void add_look_options(Command command, LookOptions& options) {
    command.option("--worn WHEN", options.worn, "ceremony, evening or other");
    command.option("--wedding WEDDING", options.wedding,
                   "The wedding it is for, by name or number");
    command.option("--sitting NUMBER", options.sittings,
                   "A sitting that works on it; once for each, and together they are all");
}

}  // namespace

void add_look_commands(CommandSet& commands) {
    commands.group("look", "A finished style on one client.");
    const auto options = std::make_shared<LookOptions>();

    auto add_command =
        commands.add({"look add", "Adds a look; worn at the ceremony when not said otherwise.",
                      "qturn look add 'Ada Lindqvist' 'Low twisted bun' --sitting 4"},
                     [options](Session& session) { return add(session, *options); });
    add_command.argument("CLIENT", options->client, "Name or number");
    add_command.argument("NAME", options->name, "What you call it");
    add_look_options(add_command, *options);

    auto change_command = commands.add(
        {"look change", "Changes a look.", "qturn look change 2 --sitting 4 --sitting 9"},
        [options](Session& session) { return change(session, *options); });
    change_command.argument("LOOK", options->look, "Name or number");
    change_command.option("--name NAME", options->name, "What you call it");
    add_look_options(change_command, *options);

    commands.add({"look list", "Lists all looks.", "qturn look list"}, list_looks);

    auto show_command = commands.add(
        {"look show", "Shows a look: coverage and sign-off in short.", "qturn look show 2"},
        [options](Session& session) {
            return show(session, find_look(session.library(), options->look));
        });
    show_command.argument("LOOK", options->look, "Name or number");
}

}  // namespace quarterturn
