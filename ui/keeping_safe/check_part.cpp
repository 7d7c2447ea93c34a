#include "ui/keeping_safe/check_part.h"

#include <QPointer>

#include "ui/shell/import_progress.h"
#include "ui/shell/session.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/said_here.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QString outcome_words(const VerifyReport& report) {
    if (report.stopped) {
        return CheckPart::tr("Stopped after %n file(s). It goes on from there.", nullptr,
                             static_cast<int>(report.files));
    }
    const auto files = static_cast<int>(report.files + report.files_before);
    return report.whole() ? CheckPart::tr("%n file(s) read: everything is whole.", nullptr, files)
                          : CheckPart::tr("%n file(s) read. This wants a look:", nullptr, files);
}

QStringList found_words(const VerifyReport& found) {
    QStringList words{outcome_words(found)};
    for (const FileTrouble& trouble : found.troubles) words << said_here(sentence(trouble));
    for (const std::string& path : found.without_record) {
        const QString shown = isolated(from_utf8(path));
        words << said_here(words_without_record(path, to_utf8(shown), found.anything_erased));
    }
    for (const std::string& file : found.to_be_erased) words << said_here(file);
    for (const std::string& problem : found.lock) words << said_here(problem);
    for (const std::string& problem : found.records) words << said_here(problem);
    for (const std::string& problem : found.seals) words << said_here(problem);
    return words;
}

QString reached_words(const std::optional<Verification>& reached) {
    if (!reached || !reached->finished_at) {
        return CheckPart::tr("Not everything has been checked yet.");
    }
    const QString day = shown(date_of(*reached->finished_at));
    if (reached->problems == 0) {
        return CheckPart::tr("Last checked on %1: everything was whole.").arg(day);
    }
    //: the sentence before says the day
    return CheckPart::tr("Last checked on %1.").arg(day) + ' ' +
           CheckPart::tr("%n thing(s) wanted a look.", nullptr,
                         static_cast<int>(reached->problems));
}

}  // namespace

CheckPart::CheckPart(Session& session)
    : WorkPart(session, tr("Everything as it was"),
               tr("Reads every file and says what is damaged, missing or unknown. What a connected "
                  "backup holds is put back, and the changed file is kept beside it.")) {}

void CheckPart::refresh() {
    empty_layout(standing());
    empty_layout(ways());
    const auto reached = session().library().verification().reached();
    standing()->addWidget(make_text(reached_words(reached)));
    std::vector<QPushButton*> buttons;
    const auto add = [&](const QString& words, bool from_start) {
        buttons.push_back(make_button(words));
        connect(buttons.back(), &QPushButton::clicked, this,
                [this, from_start] { check(from_start); });
    };
    const bool under_way = reached && reached->last_photo;
    if (under_way) add(tr("Go on checking"), false);
    add(under_way ? tr("Check from the start") : tr("Check everything"), true);
    ways()->addWidget(make_button_row(buttons));
}

void CheckPart::check(bool from_start) {
    if (!may_begin()) return;
    Job* job = session().start<VerifyReport>(
        [from_start, now = session().now()](Library& library, Job& working) {
            VerifyWishes wishes;
            wishes.now = now;
            wishes.from_start = from_start;
            wishes.stop = working.stop_token();
            wishes.progress = progress_to(working);
            return verify(library, wishes);
        },
        [part = QPointer(this)](const VerifyReport& found) {
            if (part) part->report(found_words(found));
        });
    show_work(job, tr("Reading every file"));
}

}  // namespace quarterturn
