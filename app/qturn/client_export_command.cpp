#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/find.h"
#include "indexer/disk/clock.h"
#include "indexer/looks/client_record.h"
#include "indexer/record/caution.h"

namespace quarterturn {
namespace {

struct ExportOptions {
    std::string client;
    std::string to;
};

Reply export_record_of(Session& session, const ExportOptions& options) {
    const Client client = find_client(session.library(), options.client);
    export_client(session.library(), client.id, options.to, local_now());
    const std::string folder = std::filesystem::absolute(options.to).string();
    return {
        {"All records of " + client.name + " are in " + folder + ".", caution_before_passing_on},
        {{"client", client.name},
         {"client_id", client.id.value},
         {"folder", folder},
         {"caution", caution_before_passing_on}}};
}

}  // namespace

void add_client_export_command(CommandSet& commands) {
    const auto options = std::make_shared<ExportOptions>();
    auto command = commands.add(
        {"client export", "Writes everything about a client as JSON and CSV, without the photos.",
         "qturn client export 'Ada Lindqvist' --to ada"},
        [options](Session& session) { return export_record_of(session, *options); });
    command.argument("CLIENT", options->client, "Name or number");
    command.required_option("--to FOLDER", options->to, "A new folder for it");
}

}  // namespace quarterturn
