#include "ui/what_changed/moment_words.h"

#include <QCoreApplication>
#include <QLocale>

#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

struct MomentWords {
    Q_DECLARE_TR_FUNCTIONS(MomentWords)
};

QString day(LocalTime time) {
    return QLocale().toString(to_qdate(date_of(time)), QStringLiteral("d MMM yyyy"));
}

}  // namespace

QString when_words(const RecipeMoment& moment) {
    if (!moment.sitting) return MomentWords::tr("saved on %1").arg(day(moment.revision.saved_at));
    const Sitting& sitting = *moment.sitting;
    //: a kind of sitting and its date
    return MomentWords::tr("%1 on %2").arg(shown(sitting.kind), day(sitting.starts));
}

QString which_words(const RecipeMoment& moment) {
    //: a look and the number of its recipe
    return MomentWords::tr("%1, recipe %2")
        .arg(isolated(from_utf8(moment.look.name)))
        .arg(moment.revision.number);
}

QString moment_words(const RecipeMoment& moment) {
    //: when that was, the number of the recipe, and the look
    return MomentWords::tr("%1, recipe %2: %3")
        .arg(when_words(moment))
        .arg(moment.revision.number)
        .arg(isolated(from_utf8(moment.look.name)));
}

}  // namespace quarterturn
