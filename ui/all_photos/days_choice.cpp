#include "ui/all_photos/days_choice.h"

#include <QGridLayout>
#include <algorithm>

#include "ui/theme/theme.h"
#include "ui/widgets/date_field.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

DaysChoice::DaysChoice(Date from, Date to, QWidget* parent) : QFrame(parent, Qt::Popup) {
    setAttribute(Qt::WA_DeleteOnClose);
    setProperty("kind", QStringLiteral("choices"));
    setAccessibleName(tr("Days"));
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(space(4), space(4), space(4), space(4));
    grid->setSpacing(space(2));
    QDateEdit* first = make_date_field(from);
    QDateEdit* last = make_date_field(to);
    const auto add = [&](int row, const QString& name, QDateEdit* field) {
        field->setAccessibleName(name);
        grid->addWidget(make_text(name), row, 0);
        grid->addWidget(field, row, 1);
    };
    add(0, tr("From"), first);
    add(1, tr("To"), last);
    QPushButton* take = make_next_button(tr("Show these days"));
    grid->addWidget(take, 2, 1, Qt::AlignTrailing);
    connect(take, &QPushButton::clicked, this, [this, first, last] {
        const auto [earlier, later] = std::minmax(date_in(*first), date_in(*last));
        close();
        emit chosen(earlier, later);
    });
}

}  // namespace quarterturn
