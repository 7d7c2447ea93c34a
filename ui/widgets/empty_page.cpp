#include "ui/widgets/empty_page.h"

#include <algorithm>

#include "ui/theme/theme.h"
#include "ui/widgets/coverage_ring.h"
#include "ui/widgets/parts.h"

namespace quarterturn {
namespace {

constexpr int widest_sentence_steps = 130;

}  // namespace

EmptyPage::EmptyPage(const QString& sentence, const QString& button_text, QWidget* parent)
    : QWidget(parent), text_(make_heading(sentence)) {
    auto* ring = new CoverageRing(space(40));
    ring->setAccessibleName(tr("an empty ring"));
    ring->setToolTip({});
    text_->setAlignment(Qt::AlignHCenter);
    text_->setMaximumWidth(space(widest_sentence_steps));
    keep_height_at(text_->maximumWidth());
    QHBoxLayout* middle = make_row(0);
    middle->addStretch(1);
    middle->addWidget(text_, 1000);
    middle->addStretch(1);
    QPushButton* button = make_next_button(button_text);
    connect(button, &QPushButton::clicked, this, &EmptyPage::started);

    auto* column = new QVBoxLayout(this);
    column->setSpacing(space(6));
    column->addStretch(2);
    column->addWidget(ring, 0, Qt::AlignHCenter);
    column->addLayout(middle);
    column->addWidget(button, 0, Qt::AlignHCenter);
    column->addStretch(3);
    setFocusProxy(button);
}

// A layout that is short of height would cut a sentence that runs over several lines.
void EmptyPage::keep_height_at(int width) {
    text_->setMinimumHeight(text_->heightForWidth(std::clamp(width, 1, text_->maximumWidth())));
}

void EmptyPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    keep_height_at(layout()->contentsRect().width());
}

}  // namespace quarterturn
