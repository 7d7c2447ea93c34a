#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/read_file.h"
#include "app/qturn/say.h"
#include "indexer/disk/clock.h"
#include "indexer/intake/scenario.h"

namespace quarterturn {
namespace {

Reply load(Session& session, const std::string& file) {
    Library& library = session.library();
    const std::string scenario = read_text(file);
    ScenarioReport report;
    library.history().record("loaded a scenario",
                             [&] { report = load_scenario(library, scenario, local_now()); });
    const auto count = [](int number) { return static_cast<std::size_t>(number); };
    return {{"Loaded " +
             joined({count_text(count(report.clients), "client"),
                     count_text(count(report.weddings), "wedding"),
                     count_text(count(report.sittings), "sitting"),
                     count_text(count(report.looks), "look")}) +
             "."},
            {{"clients", report.clients},
             {"weddings", report.weddings},
             {"sittings", report.sittings},
             {"looks", report.looks}}};
}

Reply tag(Session& session, const std::string& file) {
    const int tagged = load_tags(session.library(), read_text(file));
    return {{"Tagged " + count_text(static_cast<std::size_t>(tagged), "photo") + "."},
            {{"tagged", tagged}}};
}

}  // namespace

void add_scenario_command(CommandSet& commands) {
    const auto file = std::make_shared<std::string>();
    const auto tags = std::make_shared<bool>(false);
    auto command = commands.add(
        {"scenario",
         "Loads clients, weddings, sittings, looks and recipes from a file, all or nothing.",
         "qturn scenario demo_photos/scenario.json"},
        [file, tags](Session& session) {
            return *tags ? tag(session, *file) : load(session, *file);
        });
    command.argument("FILE", *file, "A scenario file (JSON)");
    command.flag("--tags", *tags,
                 "Load the tags of photos that are in the library already, and nothing else");
}

}  // namespace quarterturn
