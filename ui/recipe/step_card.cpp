#include "ui/recipe/step_card.h"

#include <QKeyEvent>

#include "indexer/record/caution.h"
#include "indexer/record/recipe_text.h"
#include "ui/recipe/field_form.h"
#include "ui/recipe/long_text_field.h"
#include "ui/recipe/marked_button.h"
#include "ui/recipe/number_field.h"
#include "ui/recipe/photo_tiles.h"
#include "ui/recipe/photos_field.h"
#include "ui/recipe/reading_font.h"
#include "ui/recipe/recipe_aids.h"
#include "ui/recipe/record_fields.h"
#include "ui/shell/session.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

StepCard::StepCard(RecipeAids& aids, QWidget* parent)
    : Field(parent),
      aids_(aids),
      heading_(new MarkedButton(Mark::folded, {})),
      strip_(new PhotoTiles(aids.session())),
      lost_(make_quiet({})),
      form_(new FieldForm),
      photos_(new PhotosField(aids)),
      heat_(make_quiet(from_utf8(heat_caution))) {
    QVBoxLayout* column = make_column(1);
    heading_->setFont(reading_font());
    column->addWidget(heading_);
    QVBoxLayout* inside = make_column();
    inside->setContentsMargins(space(7), 0, 0, 0);
    for (QWidget* part : {static_cast<QWidget*>(strip_), static_cast<QWidget*>(lost_),
                          static_cast<QWidget*>(form_)}) {
        inside->addWidget(part);
    }
    column->addLayout(inside);
    setLayout(column);
    setFocusProxy(heading_);
    add_fields();
    watch(*form_);
    connect(form_, &Field::changed, this, &StepCard::show_words);
    connect(heading_, &MarkedButton::clicked, this, [this] { unfold(!unfolded_); });
    connect(&aids_, &RecipeAids::photos_changed, this, &StepCard::show_photos);
    connect(strip_, &PhotoTiles::clicked, this, [this](PhotoId photo) {
        aids_.session().go_to(
            {.moment = Moment::round_the_head, .look = aids_.look()->id, .photo = photo});
    });
    unfold(false);
    show_words();
}

void StepCard::add_fields() {
    const auto add = [this](const QString& word, auto* field, auto member) {
        form_->add(word, *field);
        return fields_.tie(field, member);
    };
    auto* words = add(
        tr("What is done"), new LongTextField(tr("twist the length into a low bun")),
        [](Step & step) -> auto& { return step.words; });
    words->complete_from(aids_, WordsFor::step);
    add(
        tr("Hands-on"), new WholeNumberField(tr("minutes")),
        [](Step & step) -> auto& { return step.minutes; });
    add(
        tr("Waiting"), new WholeNumberField(tr("minutes")),
        [](Step & step) -> auto& { return step.waiting_minutes; });
    add(
        tr("Pins"), make_pins_list(aids_), [](Step & step) -> auto& { return step.pins; });
    add(
        tr("Heat tool"), new HeatToolFields(aids_),
        [](Step & step) -> auto& { return step.heat_tool; });
    form_->add_below(*heat_);
    add(
        tr("Winding"), new WindingFields, [](Step & step) -> auto& { return step.winding; });
    add(
        tr("Setting"), new SettingFields, [](Step & step) -> auto& { return step.setting; });
    add(
        tr("Backcombing"), new BackcombingFields(aids_),
        [](Step & step) -> auto& { return step.backcombing; });
    add(
        tr("Products"), make_product_list(aids_),
        [](Step & step) -> auto& { return step.products; });
    add(
        tr("Photos"), photos_, [](Step & step) -> auto& { return step.photos; });
    form_->add_below(*build_buttons());
}

QWidget* StepCard::build_buttons() {
    auto* buttons = new QWidget;
    auto* row = new QHBoxLayout(buttons);
    row->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString& text, const QString& keys, auto act) {
        QPushButton* button = make_quiet_button(text);
        button->setToolTip(keys);
        connect(button, &QPushButton::clicked, this, act);
        row->addWidget(button);
    };
    add(tr("Up"), tr("Alt+Up"), [this] { emit wants_move(-1); });
    add(tr("Down"), tr("Alt+Down"), [this] { emit wants_move(1); });
    add(tr("One more like it"), tr("Alt+Shift+Down"), [this] { emit wants_double(); });
    add(tr("Remove"), tr("Alt+Delete"), [this] { emit wants_removal(); });
    row->addStretch();
    return buttons;
}

void StepCard::name_it(const QString& name) {
    form_->name_it(name);
}

void StepCard::show_number(int number) {
    number_ = number;
    show_words();
}

void StepCard::show_value(const Step& step) {
    fields_.show(step);
    show_words();
}

void StepCard::show_words() {
    const Step step = value();
    const QString words = from_utf8(step_text(step));
    //: the number of a step and what is done
    heading_->show_text(
        tr("%1. %2").arg(number_).arg(words.isEmpty() ? tr("nothing said yet") : words));
    heading_->setAccessibleName(tr("Step %1").arg(heading_->text()));
    heat_->setVisible(step.heat_tool.has_value());
    show_photos();
}

void StepCard::show_photos() {
    const std::vector<std::string>& checksums = photos_->value();
    std::vector<Photo> photos;
    for (const std::string& checksum : checksums) {
        if (const auto photo = aids_.photo(checksum)) photos.push_back(*photo);
    }
    strip_->show_photos(photos);
    strip_->setVisible(!photos.empty());
    const int lost = static_cast<int>(checksums.size() - photos.size());
    lost_->setText(tr("%n photo(s) of this step are not in the library.", nullptr, lost));
    lost_->setVisible(lost > 0);
}

void StepCard::unfold(bool unfolded) {
    unfolded_ = unfolded;
    heading_->show_mark(unfolded ? Mark::unfolded : Mark::folded);
    form_->setVisible(unfolded);
    if (unfolded && heading_->hasFocus()) form_->focus_first();
}

void StepCard::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape || !unfolded_) return Field::keyPressEvent(event);
    heading_->setFocus();
    unfold(false);
}

}  // namespace quarterturn
