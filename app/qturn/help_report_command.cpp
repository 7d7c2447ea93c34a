#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/out_file.h"
#include "app/qturn/say.h"
#include "indexer/disk/clock.h"
#include "indexer/help_report/help_report.h"

namespace quarterturn {
namespace {

struct HelpReportOptions {
    std::string out;
    bool replace = false;
};

nlohmann::json facts_json(const std::vector<HelpFact>& facts) {
    nlohmann::json list = nlohmann::json::array();
    for (const HelpFact& fact : facts) list.push_back({{"what", fact.what}, {"value", fact.value}});
    return list;
}

Reply report_for_help(Session& session, const HelpReportOptions& options) {
    if (!options.out.empty()) refuse_bad_place(session, options.out, options.replace);
    Library& library = session.library();
    std::vector<HelpFact> facts = help_facts(library, local_now());
    facts.insert(facts.begin(), {"program", "qturn " QUARTERTURN_VERSION});
    const std::string text = help_text(facts);
    Reply reply{split_lines(text), {{"facts", facts_json(facts)}, {"file", nullptr}}};
    if (!options.out.empty()) {
        replace_file(library.disk(), options.out, std::as_bytes(std::span(text)));
        reply.lines = {"Written: " + options.out + ". Read it before you send it to anybody."};
        reply.data["file"] = options.out;
    }
    return reply;
}

}  // namespace

void add_help_report_command(CommandSet& commands) {
    const auto options = std::make_shared<HelpReportOptions>();
    auto command = commands.add(
        {"help-report",
         "Tells versions, sizes and counts for somebody who helps with the program; nothing that "
         "names anybody is in it.",
         "qturn help-report --out for-help.txt"},
        [options](Session& session) { return report_for_help(session, *options); });
    command.option("--out FILE", options->out, "Write it into this file");
    command.flag("--replace", options->replace, "Write over the file that is there");
}

}  // namespace quarterturn
