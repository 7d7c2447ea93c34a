#include "ui/coming_up/occasion_words.h"

#include <QCoreApplication>

#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QString said(const char* text) {
    return QCoreApplication::translate("occasion", text);
}

QString capitalised(QString text) {
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

}  // namespace

QString occasion_title(const Occasion& occasion) {
    if (occasion.is_wedding) {
        return said(QT_TRANSLATE_NOOP("occasion", "Wedding of %1"))
            .arg(isolated(from_utf8(occasion.wedding->name)));
    }
    //: what a sitting is for, and with whom
    return said(QT_TRANSLATE_NOOP("occasion", "%1, %2"))
        .arg(capitalised(shown(occasion.sittings.front().kind)),
             isolated(from_utf8(occasion.clients.front().client.name)));
}

QString occasion_details(const Occasion& occasion) {
    QStringList parts;
    if (!occasion.sittings.empty()) {
        parts << hours_shown(occasion.sittings.front().starts, occasion.sittings.back().ends);
    }
    if (occasion.wedding) {
        const Wedding& wedding = *occasion.wedding;
        if (!occasion.is_wedding) {
            parts << said(QT_TRANSLATE_NOOP("occasion", "for the wedding of %1 on %2"))
                         .arg(isolated(from_utf8(wedding.name)), shown(wedding.date));
        }
        if (occasion.is_wedding && !wedding.venue.empty()) parts << from_utf8(wedding.venue);
        if (occasion.is_wedding && !wedding.ready_by.empty()) {
            parts << said(QT_TRANSLATE_NOOP("occasion", "ready by %1"))
                         .arg(from_utf8(wedding.ready_by));
        }
    }
    return parts.join(QStringLiteral("  ·  "));
}

QString client_title(const ClientAhead& client) {
    const QString name = from_utf8(client.client.name);
    if (client.role.empty()) return name;
    //: a client and her role in the party
    return said(QT_TRANSLATE_NOOP("occasion", "%1, %2"))
        .arg(isolated(name), from_utf8(client.role));
}

Sitting further_trial(const Occasion& occasion, Date today) {
    using namespace std::chrono_literals;
    Sitting trial;
    trial.kind = SittingKind::trial;
    if (!occasion.clients.empty()) trial.client = occasion.clients.front().client.id;
    if (occasion.wedding) trial.wedding = occasion.wedding->id;
    const LocalTime day(std::chrono::local_days(today) + std::chrono::days(7));
    trial.starts = day + 10h;
    trial.ends = day + 12h;
    return trial;
}

Look new_look_for(const Occasion& occasion, const Client& client) {
    Look look;
    look.client = client.id;
    if (occasion.wedding) look.wedding = occasion.wedding->id;
    if (!occasion.is_wedding) look.sittings = {occasion.sittings.front().id};
    return look;
}

}  // namespace quarterturn
