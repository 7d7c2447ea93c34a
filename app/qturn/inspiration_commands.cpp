#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/names.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"
#include "indexer/portfolio/inspiration.h"

namespace quarterturn {
namespace {

using nlohmann::json;

std::vector<Inspiration> kept_ones(Library& library, const Text& client) {
    if (!client) return library.inspirations().all();
    return library.inspirations().of_client(find_client(library, *client).id);
}

Reply list(Session& session, const Text& client) {
    Library& library = session.library();
    const Names names(library);
    std::vector<std::vector<std::string>> rows;
    json data = json::array();
    for (const Inspiration& kept : kept_ones(library, client)) {
        rows.push_back({number_text(kept.id.value), names.client(kept.client), kept.name,
                        iso_text(date_of(kept.kept_at))});
        data.push_back({{"id", kept.id.value},
                        {"client", names.client(kept.client)},
                        {"client_id", kept.client.value},
                        {"name", kept.name},
                        {"kept_at", iso_text(kept.kept_at)}});
    }
    if (rows.empty()) {
        rows.push_back(
            {"No picture from elsewhere is kept. Keep one with: qturn pairs like PICTURE "
             "--client NAME"});
    }
    return {columns(rows), {{"inspirations", data}}};
}

Reply remove(Session& session, const std::string& number) {
    Library& library = session.library();
    const Inspiration kept = find_inspiration(library, number);
    remove_inspiration(library, kept.id);
    return {{"No longer kept: " + kept.name + "."}, {{"id", kept.id.value}, {"name", kept.name}}};
}

}  // namespace

void add_inspiration_commands(CommandSet& commands) {
    commands.group("inspiration",
                   "Pictures that clients bring along: somebody else's work, never exported.");
    const auto client = std::make_shared<Text>();
    auto list_command = commands.add(
        {"inspiration list", "Lists the pictures kept with clients by 'pairs like --client'.",
         "qturn inspiration list --client 'Ada Lindqvist'"},
        [client](Session& session) { return list(session, *client); });
    list_command.option("--client NAME", *client, "Hers alone");
    const auto number = std::make_shared<std::string>();
    auto remove_command =
        commands.add({"inspiration remove", "Removes a picture that is kept with a client.",
                      "qturn inspiration remove 3"},
                     [number](Session& session) { return remove(session, *number); });
    remove_command.argument("NUMBER", *number, "As it is listed");
}

}  // namespace quarterturn
