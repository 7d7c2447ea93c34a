#include "ui/recipe/part_card.h"

#include <QKeyEvent>

#include "ui/recipe/marked_button.h"
#include "ui/recipe/reading_font.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"

namespace quarterturn {

PartCard::PartCard(RecipePlace place)
    : place_(place),
      heading_(new MarkedButton(Mark::folded, shown(place))),
      nothing_(make_quiet(tr("nothing yet"))),
      reading_(new QWidget),
      lines_(new QVBoxLayout(reading_)),
      form_(new FieldForm) {
    setProperty("kind", QStringLiteral("card"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space(4), space(2), space(4), space(2));
    column->setSpacing(space(2));
    heading_->setFont(text_font(TextRole::heading));
    nothing_->setWordWrap(false);
    QHBoxLayout* top = make_row(3);
    top->addWidget(heading_, 1);
    top->addWidget(nothing_);
    column->addLayout(top);
    lines_->setContentsMargins(space(6), 0, 0, space(2));
    lines_->setSpacing(space(1));
    column->addWidget(reading_);
    form_->layout()->setContentsMargins(space(6), 0, 0, space(2));
    column->addWidget(form_);
    connect(heading_, &MarkedButton::clicked, this, [this] {
        if (unfolded_) {
            unfold(false);
        } else {
            begin_writing();
        }
    });
    connect(form_, &Field::changed, this, &PartCard::changed);
    connect(form_, &Field::took_out, this, &PartCard::took_out);
    unfold(false);
}

void PartCard::add_watched(Field& field) {
    form_->add_below(field);
    connect(&field, &Field::changed, this, &PartCard::changed);
    connect(&field, &Field::took_out, this, &PartCard::took_out);
}

void PartCard::add_words(const QString& words) {
    form_->add_below(*make_quiet(words));
}

void PartCard::add_below(QWidget& widget) {
    form_->add_below(widget);
}

void PartCard::show_recipe(const Recipe& recipe) {
    fields_.show(recipe);
    if (!unfolded_) show_lines();
}

QFont PartCard::line_font() const {
    return reading_font();
}

void PartCard::show_lines() {
    empty_layout(lines_);
    const Recipe recipe = fields_.value();
    const QStringList lines = lines_at(place_, recipe);
    for (const QString& line : lines) {
        QLabel* label = make_text(line);
        label->setFont(line_font());
        lines_->addWidget(label);
    }
    if (QWidget* picture = make_picture(recipe)) lines_->addWidget(picture);
    reading_->setVisible(!lines.isEmpty());
    nothing_->setVisible(lines.isEmpty());
    heading_->setAccessibleName(lines.isEmpty() ? tr("%1, nothing yet").arg(shown(place_))
                                                : shown(place_));
}

void PartCard::unfold(bool unfolded) {
    unfolded_ = unfolded;
    heading_->show_mark(unfolded ? Mark::unfolded : Mark::folded);
    form_->setVisible(unfolded);
    reading_->setVisible(false);
    nothing_->setVisible(false);
    if (!unfolded) show_lines();
}

void PartCard::begin_writing() {
    unfold(true);
    form_->focus_first();
}

void PartCard::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape || !unfolded_) return QFrame::keyPressEvent(event);
    heading_->setFocus();
    if (!starts_unfolded()) unfold(false);
}

}  // namespace quarterturn
