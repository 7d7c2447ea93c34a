#include "ui/consent/take_down_list.h"

#include <QDateEdit>

#include "ui/consent/consent_words.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/date_field.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

QString export_words(const Exported& exported) {
    //: a use, the day a picture went out for it, and the photo's name
    return TakeDownList::tr("%1, %2: %3")
        .arg(capitalised_words(shown(exported.use)), shown(date_of(exported.at)),
             isolated(from_utf8(exported.photo_name)));
}

TakeDownList::TakeDownList(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    const Card card = make_card();
    card.column->setSpacing(space(3));
    card.column->addWidget(make_heading(tr("To take down")));
    card.column->addWidget(make_quiet(
        tr("These are out there and may not be shown any longer. Take them down where they are, "
           "and tick them off here.")));
    tasks_ = make_column(3);
    card.column->addLayout(tasks_);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(card.frame);
    hide();
}

void TakeDownList::show_tasks(const std::vector<ToTakeDown>& tasks) {
    empty_layout(tasks_);
    for (const ToTakeDown& task : tasks) {
        tasks_->addWidget(make_hairline());
        tasks_->addWidget(make_task(task));
    }
    setVisible(!tasks.empty());
}

QWidget* TakeDownList::make_task(const ToTakeDown& task) {
    const Exported& out = task.exported;
    auto* row = new QWidget;
    auto* parts = new QHBoxLayout(row);
    parts->setContentsMargins(0, 0, 0, 0);
    parts->setSpacing(space(3));
    QVBoxLayout* words = make_column(0);
    words->addWidget(make_text(export_words(out)));
    for (const std::string& place : out.places) {
        //: where an exported picture was put
        words->addWidget(make_text(tr("Put at: %1").arg(from_utf8(place))));
    }
    words->addWidget(make_quiet(from_utf8(out.file)));
    for (const std::string& why : task.why) words->addWidget(make_quiet(from_utf8(why)));
    parts->addLayout(words, 1);
    const Date today = session_.today();
    QDateEdit* day = make_date_field(today);
    day->setMaximumDate(to_qdate(today));
    day->setAccessibleName(tr("The day %1 was taken down").arg(from_utf8(out.photo_name)));
    QPushButton* tick = make_button(tr("Taken down"));
    tick->setAccessibleName(tr("%1 was taken down").arg(from_utf8(out.photo_name)));
    connect(tick, &QPushButton::clicked, this,
            [this, day, id = out.id] { tick_off(id, date_in(*day)); });
    parts->addWidget(day, 0, Qt::AlignTop);
    parts->addWidget(tick, 0, Qt::AlignTop);
    return row;
}

void TakeDownList::tick_off(ExportId id, Date on) {
    const bool kept = session_.attempt([&] {
        quarterturn::tick_off(session_.library(), id, {on, {}});
    });
    if (kept) session_.touch();
}

}  // namespace quarterturn
