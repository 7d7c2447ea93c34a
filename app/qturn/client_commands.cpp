#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "app/qturn/say.h"
#include "app/qturn/to_json.h"

namespace quarterturn {
namespace {

struct ClientOptions {
    std::string client;
    std::optional<std::string> name;
    std::optional<std::string> note;
};

Client with_options(Client client, const ClientOptions& options) {
    client.name = options.name.value_or(client.name);
    client.note = options.note.value_or(client.note);
    return client;
}

Reply show(Session& session, const Client& client) {
    const Names names(session.library());
    Reply reply{{number_text(client.id.value) + "  " + client.name}, {{"client", to_json(client)}}};
    if (!client.note.empty()) reply.lines.push_back("Note: " + client.note);
    const auto sittings = session.library().sittings().of_client(client.id);
    const auto looks = session.library().looks().of_client(client.id);
    for (const Sitting& sitting : sittings) {
        reply.lines.push_back("Sitting " + number_text(sitting.id.value) + "  " +
                              names.sitting(sitting.id));
    }
    for (const Look& look : looks) {
        reply.lines.push_back("Look " + number_text(look.id.value) + "  " + look.name);
    }
    reply.data["sittings"] = list_json(sittings, names);
    reply.data["looks"] = list_json(looks, names);
    return reply;
}

Reply list_clients(Session& session) {
    const auto clients = session.library().clients().all();
    std::vector<std::vector<std::string>> rows;
    for (const Client& client : clients) {
        rows.push_back({number_text(client.id.value), client.name, client.note});
    }
    if (clients.empty()) rows.push_back({"No clients yet. Add one with: qturn client add NAME"});
    return {columns(rows), {{"clients", list_json(clients)}}};
}

Reply saved(const Client& client, const std::string& said) {
    return {{said + " client " + number_text(client.id.value) + ", " + client.name + "."},
            {{"client", to_json(client)}}};
}

Reply add(Session& session, const ClientOptions& options) {
    Library& library = session.library();
    Client client = with_options({}, options);
    library.history().record("added the client " + client.name,
                             [&] { client.id = library.clients().add(client); });
    return saved(client, "Added");
}

Reply change(Session& session, const ClientOptions& options) {
    Library& library = session.library();
    const Client client = with_options(find_client(library, options.client), options);
    library.history().record("changed the client " + client.name,
                             [&] { library.clients().change(client); });
    return saved(client, "Changed");
}

}  // namespace

void add_client_commands(CommandSet& commands) {
    commands.group("client", "Anyone who sits in the chair.");
    const auto options = std::make_shared<ClientOptions>();
    const auto note_option = [options](Command command) {
        command.option("--note TEXT", options->note, "Anything to remember");
    };

    auto add_command = commands.add(
        {"client add", "Adds a client.", "qturn client add 'Ada Lindqvist' --note 'fine hair'"},
        [options](Session& session) { return add(session, *options); });
    add_command.argument("NAME", options->name, "Her name");
    note_option(add_command);

    auto change_command = commands.add(
        {"client change", "Changes a client.", "qturn client change 3 --name 'Ada Berg'"},
        [options](Session& session) { return change(session, *options); });
    change_command.argument("CLIENT", options->client, "Name or number");
    change_command.option("--name NAME", options->name, "Her name now");
    note_option(change_command);

    commands.add({"client list", "Lists all clients.", "qturn client list"}, list_clients);

    auto show_command = commands.add(
        {"client show", "Shows a client with her sittings and looks.", "qturn client show 3"},
        [options](Session& session) {
            return show(session, find_client(session.library(), options->client));
        });
    show_command.argument("CLIENT", options->client, "Name or number");
}

}  // namespace quarterturn
