#include <QApplication>
#include <QClipboard>
#include <QKeyEvent>
#include <QLineEdit>

#include "indexer/record/recipe_text.h"
#include "indexer/rules/shorthand.h"
#include "ui/recipe/paste_picture.h"
#include "ui/recipe/photos_field.h"
#include "ui/recipe/recipe_parts.h"
#include "ui/recipe/step_list.h"
#include "ui/recipe/text_field.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

BuildPart::BuildPart(RecipeAids& aids)
    : PartCard(RecipePlace::build),
      steps_(new StepList(aids)),
      line_(new QLineEdit),
      read_as_(make_quiet({})) {
    add_wide(
        steps_, [](Recipe & recipe) -> auto& { return recipe.build; });
    line_->setAccessibleName(tr("The next step"));
    line_->setPlaceholderText(tr("the next step: 25mm tongs away, 4 pins crossed"));
    complete_from_own_words(*line_, aids, WordsFor::step);
    connect(line_, &QLineEdit::textChanged, this, &BuildPart::read_along);
    connect(line_, &QLineEdit::returnPressed, this, &BuildPart::add_step);
    add_below(*line_);
    add_below(*read_as_);
    read_along({});
    unfold(true);
    qApp->installEventFilter(this);
}

void BuildPart::begin_writing() {
    unfold(true);
    line_->setFocus();
}

void BuildPart::read_along(const QString& line) {
    const QString read = from_utf8(step_text(parse_shorthand(to_utf8(line)).step));
    //: how a step that she types is understood
    read_as_->setText(read.isEmpty() ? tr("Say a step in your own words and press Enter: sizes, "
                                          "tools, pins and minutes go to their fields.")
                                     : tr("Read as: %1").arg(read));
}

void BuildPart::add_step() {
    const QString line = line_->text().trimmed();
    if (line.isEmpty()) return;
    line_->clear();
    steps_->append(parse_shorthand(to_utf8(line)).step);
}

bool BuildPart::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress ||
        !static_cast<QKeyEvent*>(event)->matches(QKeySequence::Paste)) {
        return PartCard::eventFilter(watched, event);
    }
    const QMimeData* clipboard = QGuiApplication::clipboard()->mimeData();
    StepCard* card = isVisible() ? steps_->card_in_hand() : nullptr;
    if (!card || !clipboard || !holds_pictures(*clipboard)) return false;
    card->photos().paste();
    return true;
}

}  // namespace quarterturn
