#include "ui/widgets/empty_page.h"

#include "ui/theme/theme.h"
#include "ui/widgets/coverage_ring.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

EmptyPage::EmptyPage(const QString& sentence, const QString& button_text, QWidget* parent)
    : QWidget(parent) {
    auto* ring = new CoverageRing(space(40));
    ring->setAccessibleName(tr("an empty ring"));
    ring->setToolTip({});
    QLabel* text = make_heading(sentence);
    text->setAlignment(Qt::AlignHCenter);
    text->setFixedSize(space(130), text->heightForWidth(space(130)));
    QPushButton* button = make_next_button(button_text);
    connect(button, &QPushButton::clicked, this, &EmptyPage::started);

    auto* column = new QVBoxLayout(this);
    column->setSpacing(space(6));
    column->addStretch(2);
    column->addWidget(ring, 0, Qt::AlignHCenter);
    column->addWidget(text, 0, Qt::AlignHCenter);
    column->addWidget(button, 0, Qt::AlignHCenter);
    column->addStretch(3);
    setFocusProxy(button);
}

}  // namespace quarterturn
