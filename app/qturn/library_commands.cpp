#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/progress.h"
#include "app/qturn/say.h"
#include "app/qturn/stop_on_signal.h"
#include "indexer/intake/thumbnails.h"
#include "indexer/worker/confined.h"

namespace quarterturn {
namespace {

// A folder that was there before keeps its permissions.
bool open_to_others(const Path& folder) {
    using std::filesystem::perms;
    const perms given = std::filesystem::status(folder).permissions();
    return (given & (perms::group_all | perms::others_all)) != perms::none;
}

Reply init(Session& session) {
    const Library library = Library::create(session.folder());
    const std::string folder = library.folder().string();
    const bool open = open_to_others(folder);
    Reply reply{{"A new library lies in " + folder + "."},
                {{"library", folder}, {"open_to_others", open}}};
    if (open) {
        reply.lines.emplace_back(
            "Others who use this computer can look into that folder, though not at photos or "
            "records: to keep them out of it, too, take that from its permissions (chmod 700).");
    }
    return reply;
}

Reply make_cache(Session& session) {
    Library& library = session.library();
    const StopOnSignal stop;
    ProgressLine line(false);
    const auto decoder = make_confined_decoder();
    library.search().rebuild();
    const CacheReport report = rebuild_cache(library, *decoder, line.counter(), stop.token());
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

nlohmann::json setting_json(SettingsTable settings, const LibrarySetting& setting) {
    const auto value = settings.get(setting.name);
    return {{"name", setting.name},
            {"value", value ? nlohmann::json(*value) : nlohmann::json()},
            {"meaning", setting.meaning}};
}

Reply show_settings(Session& session) {
    SettingsTable settings = session.library().settings();
    std::vector<std::vector<std::string>> rows;
    Reply reply{{}, {{"settings", nlohmann::json::array()}}};
    for (const LibrarySetting& setting : library_settings) {
        rows.push_back({std::string(setting.name), settings.get(setting.name).value_or("not set"),
                        std::string(setting.meaning)});
        reply.data["settings"].push_back(setting_json(settings, setting));
    }
    reply.lines = columns(rows);
    return reply;
}

LibrarySetting setting_from(const std::string& name) {
    if (const auto setting = find_library_setting(name)) return *setting;
    std::vector<std::string> known;
    for (const LibrarySetting& setting : library_settings) {
        known.push_back("'" + std::string(setting.name) + "'");
    }
    throw WrongUse("'" + name + "' is no setting. Known are " + joined(known) + ".");
}

Reply show_setting(Session& session, const LibrarySetting& setting) {
    const auto value = session.library().settings().get(setting.name);
    const std::string name(setting.name);
    return {{value ? name + ": " + *value : "'" + name + "' is not set."},
            setting_json(session.library().settings(), setting)};
}

Reply change_setting(Session& session, const LibrarySetting& setting, const std::string& value) {
    if (const auto reason = reason_against(setting, value); !reason.empty()) {
        throw WrongUse(reason);
    }
    Library& library = session.library();
    library.history().record("changed the setting " + std::string(setting.name),
                             [&] { library.settings().set(setting.name, value); });
    return show_setting(session, setting);
}

void add_settings(CommandSet& commands) {
    const auto name = std::make_shared<Text>();
    const auto value = std::make_shared<Text>();
    auto command =
        commands.add({"settings", "Shows what is set for the library, or sets it.",
                      "qturn settings 'business line' 'Studio am Fluss, by appointment'"},
                     [name, value](Session& session) {
                         if (!*name) return show_settings(session);
                         const LibrarySetting setting = setting_from(**name);
                         return *value ? change_setting(session, setting, **value)
                                       : show_setting(session, setting);
                     });
    command.optional_argument("NAME", *name, "Which one; all are shown without it");
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
