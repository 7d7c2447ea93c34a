#include "ui/widgets/wedding_choice.h"

#include <QLocale>

#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QVariant key_of_wedding(WeddingId wedding) {
    return QVariant::fromValue(qlonglong{wedding.value});
}

// "15 May 2027", which a line that runs to the left does not turn.
QString day_and_year(Date date) {
    return isolated(QLocale().toString(to_qdate(date), QStringLiteral("d MMM yyyy")));
}

}  // namespace

WeddingChoice::WeddingChoice(QWidget* parent) : QComboBox(parent) {
    setAccessibleName(tr("Wedding"));
    setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    connect(this, &QComboBox::activated, this,
            [this](int index) { emit chosen(WeddingId{itemData(index).toLongLong()}); });
}

std::optional<WeddingId> WeddingChoice::show_weddings(const std::vector<Wedding>& weddings,
                                                      std::optional<WeddingId> wished) {
    clear();
    for (const Wedding& wedding : weddings) {
        //: a day and whose wedding is on it
        addItem(tr("%1: %2").arg(day_and_year(wedding.date), isolated(from_utf8(wedding.name))),
                key_of_wedding(wedding.id));
    }
    if (weddings.empty()) return std::nullopt;
    const int there = wished ? findData(key_of_wedding(*wished)) : -1;
    setCurrentIndex(std::max(there, 0));
    return WeddingId{currentData().toLongLong()};
}

}  // namespace quarterturn
