#include "ui/shell/lock_work.h"

#include <QCoreApplication>

#include "indexer/disk/lines_by_reason.h"
#include "ui/widgets/said_here.h"
#include "ui/widgets/words.h"

namespace quarterturn {

LockWishes lock_wishes(Job& job) {
    return {[&job](std::int64_t done, std::int64_t total) {
                job.progress({done, total, {}, {}});
            },
            job.stop_token()};
}

QString said_of(const LockReport& report, const QString& done) {
    const std::vector<std::string> problems = sentences_by_reason(report.problems);
    const QString said = said_with(
        report.stopped
            ? QCoreApplication::translate(
                  "lock_work", "Stopped. Nothing is lost: give the passphrase to go on from there.")
            : done,
        problems);
    const bool in_full =
        problems.size() == report.problems.size() && problems.size() <= most_lines_below;
    if (in_full) return said;
    return said + u'\n' +
           QCoreApplication::translate("lock_work",
                                       "qturn lock status names each file that was left.");
}

}  // namespace quarterturn
