#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/progress.h"
#include "app/qturn/say.h"
#include "app/qturn/stop_on_signal.h"
#include "indexer/intake/thumbnails.h"

namespace quarterturn {
namespace {

Reply init(Session& session) {
    const Library library = Library::create(session.folder());
    return {{"A new library lies in " + library.folder().string() + "."},
            {{"library", library.folder().string()}}};
}

Reply make_cache(Session& session) {
    Library& library = session.library();
    const StopOnSignal stop;
    ProgressLine line(false);
    const auto decoder = make_local_decoder();
    library.search().rebuild();
    const CacheReport report = rebuild_cache(
        library, *decoder,
        [&line](std::int64_t done, std::int64_t total) {
            line.show({done, total, {}});
        },
        stop.token());
    Reply reply{
        {"Made " + count_text(static_cast<std::size_t>(report.made), "small picture") + "."},
        {{"made", report.made}, {"problems", report.failed}, {"stopped", report.stopped}}};
    append(reply.lines, report.failed);
    if (report.stopped || !report.failed.empty()) reply.outcome = Outcome::needs_attention;
    return reply;
}

Reply version(Session&) {
    return {{"qturn " QUARTERTURN_VERSION}, {{"version", QUARTERTURN_VERSION}}};
}

Reply show_setting(Session& session, const std::string& name) {
    const auto value = session.library().settings().get(name);
    return {{value ? name + ": " + *value : "'" + name + "' is not set."},
            {{"name", name}, {"value", value ? nlohmann::json(*value) : nlohmann::json()}}};
}

Reply change_setting(Session& session, const std::string& name, const std::string& value) {
    session.library().settings().set(name, value);
    return show_setting(session, name);
}

void add_settings(CommandSet& commands) {
    const auto name = std::make_shared<std::string>();
    const auto value = std::make_shared<std::optional<std::string>>();
    auto command = commands.add(
        {"settings", "Shows a setting of the library, or changes it.",
         "qturn settings 'business line' 'Studio am Fluss, by appointment'"},
        [name, value](Session& session) {
            return *value ? change_setting(session, *name, **value) : show_setting(session, *name);
        });
    command.argument("NAME", *name, "'business line' is printed at the foot of every page");
    command.optional_argument("VALUE", *value, "What it is to be");
}

}  // namespace

void add_library_commands(CommandSet& commands) {
    commands.add({"init", "Makes a new library in a new or empty folder.",
                  "qturn init --library ~/Quarterturn"},
                 init);
    commands.add({"rebuild-cache",
                  "Makes the small pictures that are missing from the cache, which may be deleted "
                  "at any time.",
                  "qturn rebuild-cache"},
                 make_cache);
    commands.add({"version", "Says which version this is.", "qturn version"}, version);
    add_settings(commands);
}

}  // namespace quarterturn
