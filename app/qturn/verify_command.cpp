#include "app/qturn/command_set.h"
#include "app/qturn/commands.h"
#include "app/qturn/progress.h"
#include "app/qturn/say.h"
#include "app/qturn/stop_on_signal.h"
#include "indexer/backup/verify.h"
#include "indexer/disk/clock.h"

namespace quarterturn {
namespace {

using nlohmann::json;

struct VerifyOptions {
    bool from_start = false;
    bool look_only = false;
    bool progress = false;
};

std::string_view trouble_word(Trouble trouble) {
    switch (trouble) {
        case Trouble::missing:
            return "missing";
        case Trouble::changed:
            return "changed";
        case Trouble::unreadable:
            return "unreadable";
    }
    return {};
}

json text_or_null(const std::string& text) {
    return text.empty() ? json() : json(text);
}

json troubles_json(const std::vector<FileTrouble>& troubles) {
    json list = json::array();
    for (const FileTrouble& one : troubles) {
        list.push_back({{"file", one.path},
                        {"trouble", trouble_word(one.trouble)},
                        {"healed_from", text_or_null(one.healed_from.string())},
                        {"set_aside", text_or_null(one.set_aside.string())},
                        {"held_by", text_or_null(one.held_by.string())},
                        {"moved_to", text_or_null(one.moved_to)},
                        {"moved_back", one.moved_back},
                        {"copy_at", text_or_null(one.copy_at)},
                        {"healed_by_copy", one.healed_by_copy},
                        {"not_put_back", text_or_null(one.not_put_back)}});
    }
    return list;
}

std::string first_line(const VerifyReport& report) {
    std::string line = count_text(static_cast<std::size_t>(report.files), "file") + " read";
    if (report.files_before > 0) {
        line += ", and " + std::to_string(report.files_before) + " before it was stopped";
    }
    if (report.stopped) return line + ". Stopped: run the same again to go on.";
    return line + (report.whole() ? ". Everything is whole." : ".");
}

Reply verify_reply(const VerifyReport& report) {
    Reply reply{{first_line(report)},
                {{"files", report.files},
                 {"files_before", report.files_before},
                 {"troubles", troubles_json(report.troubles)},
                 {"without_record", report.without_record},
                 {"to_be_erased", report.to_be_erased},
                 {"lock", report.lock},
                 {"records", report.records},
                 {"seals", report.seals},
                 {"whole", report.whole()},
                 {"stopped", report.stopped}}};
    for (const FileTrouble& trouble : report.troubles) reply.lines.push_back(sentence(trouble));
    for (const std::string& path : report.without_record) {
        reply.lines.push_back(words_without_record(path, path, report.anything_erased));
    }
    append(reply.lines, report.to_be_erased);
    append(reply.lines, report.lock);
    append(reply.lines, report.records);
    append(reply.lines, report.seals);
    if (!report.whole()) reply.outcome = Outcome::needs_attention;
    return reply;
}

Reply verify_library(Session& session, const VerifyOptions& options) {
    Library& library = session.library();
    const StopOnSignal stop;
    ProgressLine line(options.progress);
    VerifyWishes wishes;
    wishes.now = local_now();
    wishes.from_start = options.from_start;
    wishes.heal = !options.look_only;
    wishes.stop = stop.token();
    wishes.progress = line.teller();
    return verify_reply(verify(library, wishes));
}

}  // namespace

void add_verify_command(CommandSet& commands) {
    const auto options = std::make_shared<VerifyOptions>();
    auto command = commands.add(
        {"verify",
         "Reads every file of the library and says what is damaged, missing or unknown; puts back "
         "what a connected backup holds. Ctrl-C stops it; run again, it goes on.",
         "qturn verify"},
        [options](Session& session) { return verify_library(session, *options); });
    command.flag("--from-start", options->from_start, "Read everything, also what was read before");
    command.flag("--look-only", options->look_only, "Say what is wrong, and put nothing back");
    command.flag("--progress", options->progress,
                 "Show how far it is, also when standard error is no terminal");
}

}  // namespace quarterturn
