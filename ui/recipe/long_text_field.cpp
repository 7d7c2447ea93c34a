#include "ui/recipe/long_text_field.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QKeyEvent>
#include <QPlainTextEdit>
#include <QSignalBlocker>
#include <QStringListModel>

#include "ui/recipe/recipe_aids.h"
#include "ui/theme/theme.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

LongTextField::LongTextField(const QString& example, QWidget* parent)
    : Field(parent), text_(new QPlainTextEdit) {
    QHBoxLayout* row = make_row();
    row->addWidget(text_);
    setLayout(row);
    text_->setPlaceholderText(example);
    text_->setTabChangesFocus(true);
    text_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    text_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    text_->installEventFilter(this);
    setFocusProxy(text_);
    connect(text_, &QPlainTextEdit::textChanged, this, &Field::changed);
    connect(text_->document()->documentLayout(), &QAbstractTextDocumentLayout::documentSizeChanged,
            this, &LongTextField::fit);
    fit();
}

void LongTextField::complete_from(RecipeAids& aids, WordsFor what) {
    offered_ = new QStringListModel(this);
    completer_ = new QCompleter(offered_, this);
    completer_->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
    completer_->setWidget(text_);
    connect(completer_, qOverload<const QString&>(&QCompleter::activated), this,
            &LongTextField::take);
    connect(text_, &QPlainTextEdit::textChanged, this, [this, &aids, what] { offer(aids, what); });
}

void LongTextField::offer(const RecipeAids& aids, WordsFor what) {
    const QString begun = text_->toPlainText();
    if (signalsBlocked() || taking_ || !text_->hasFocus()) return;
    offered_->setStringList(begun.isEmpty() ? QStringList() : aids.words_beginning(what, begun));
    if (offered_->rowCount() == 0) {
        completer_->popup()->hide();
    } else {
        completer_->complete();
    }
}

void LongTextField::take(const QString& words) {
    taking_ = true;
    text_->setPlainText(words);
    text_->moveCursor(QTextCursor::End);
    taking_ = false;
}

// The keys that choose from an open list belong to the list.
bool LongTextField::eventFilter(QObject* watched, QEvent* event) {
    const bool offering = completer_ && completer_->popup()->isVisible();
    if (offering && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Tab ||
            key == Qt::Key_Escape) {
            event->ignore();
            return true;
        }
    }
    return Field::eventFilter(watched, event);
}

void LongTextField::changeEvent(QEvent* event) {
    Field::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) fit();
}

void LongTextField::fit() {
    const int lines = std::max(1, static_cast<int>(text_->document()->size().height()));
    const auto margin = static_cast<int>(text_->document()->documentMargin());
    const int frame = 2 * (space(1) + 2 + margin);
    text_->setFixedHeight(lines * text_->fontMetrics().lineSpacing() + frame);
}

void LongTextField::name_it(const QString& name) {
    text_->setAccessibleName(name);
}

void LongTextField::show_value(const std::string& text) {
    if (value() == text) return;
    const QSignalBlocker silent(this);
    text_->setPlainText(from_utf8(text));
}

std::string LongTextField::value() const {
    return to_utf8(text_->toPlainText().trimmed());
}

}  // namespace quarterturn
