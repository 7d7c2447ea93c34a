#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/drawing.h"
#include "app/qturn/find.h"
#include "app/qturn/out_file.h"
#include "app/qturn/say.h"
#include "indexer/disk/clock.h"
#include "indexer/looks/client_record.h"
#include "indexer/record/caution.h"
#include "indexer/sheet/client_sheet.h"
#include "indexer/worker/confined.h"
#include "ui/painter/paint.h"

namespace quarterturn {
namespace {

struct ExportOptions {
    std::string client;
    std::string to;
};

DrawnPdf draw(Library& library, const ClientRecord& record) {
    const Drawing drawing;
    const auto decoder = make_confined_decoder();
    const auto ruler = make_text_ruler();
    return draw_pdf(client_sheet(library, record, *ruler, date_of(local_now())), *decoder,
                    library.disk());
}

Reply export_record_of(Session& session, const ExportOptions& options) {
    refuse_in_library(session, options.to);
    Library& library = session.library();
    const ClientRecord record = client_record(library, find_client(library, options.client).id);
    const DrawnPdf pdf = draw(library, record);
    const auto left_out = export_client(library, record, pdf.span(), options.to, local_now());
    const std::string folder = std::filesystem::absolute(options.to).string();
    Reply reply{{"All records of " + record.client.name + " are in " + folder + "."},
                {{"client", record.client.name},
                 {"client_id", record.client.id.value},
                 {"folder", folder},
                 {"problems", pdf.problems},
                 {"caution", caution_before_passing_on}}};
    append(reply.lines, pdf.problems);
    append(reply.lines, left_out);
    reply.data["left_out"] = left_out;
    reply.lines.emplace_back(caution_before_passing_on);
    if (!pdf.problems.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

}  // namespace

void add_client_export_command(CommandSet& commands) {
    const auto options = std::make_shared<ExportOptions>();
    auto command = commands.add(
        {"client export",
         "Writes everything about a client: PDF, JSON and CSV, her photos and the papers "
         "of her consents.",
         "qturn client export 'Ada Lindqvist' --to ada"},
        [options](Session& session) { return export_record_of(session, *options); });
    command.argument("CLIENT", options->client, "Name or number");
    command.required_option("--to FOLDER", options->to, "A new folder for it");
}

}  // namespace quarterturn
