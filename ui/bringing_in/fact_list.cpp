#include "ui/bringing_in/fact_list.h"

#include <QGridLayout>

#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

FactList::FactList(const std::vector<ImportFact>& facts, QWidget* parent) : QWidget(parent) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(space(6));
    grid->setVerticalSpacing(space(2));
    grid->setColumnMinimumWidth(0, space(36));
    grid->setColumnStretch(1, 1);
    int row = 0;
    for (const ImportFact& fact : facts) {
        grid->addWidget(make_quiet(fact.about), row, 0, Qt::AlignTop);
        grid->addWidget(make_text(fact.lines.join(QLatin1Char('\n'))), row++, 1);
    }
}

}  // namespace quarterturn
