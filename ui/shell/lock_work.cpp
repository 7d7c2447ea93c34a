#include "ui/shell/lock_work.h"

#include <QCoreApplication>

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
    QStringList said;
    if (report.stopped) {
        said << QCoreApplication::translate(
            "lock_work", "Stopped. Nothing is lost: give the passphrase to go on from there.");
    } else if (!done.isEmpty()) {
        said << done;
    }
    for (const std::string& problem : report.problems) said << said_here(problem);
    return said.join(u'\n');
}

}  // namespace quarterturn
