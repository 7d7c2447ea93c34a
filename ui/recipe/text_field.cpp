#include "ui/recipe/text_field.h"

#include <QAbstractItemView>
#include <QBoxLayout>
#include <QCompleter>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QStringListModel>

#include "ui/recipe/recipe_aids.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

void complete_from_own_words(QLineEdit& line, RecipeAids& aids, WordsFor what) {
    auto* model = new QStringListModel(&line);
    auto* completer = new QCompleter(model, &line);
    completer->setCompletionMode(QCompleter::UnfilteredPopupCompletion);
    line.setCompleter(completer);
    QObject::connect(
        &line, &QLineEdit::textEdited, model, [&aids, model, what](const QString& text) {
            model->setStringList(text.isEmpty() ? QStringList() : aids.words_beginning(what, text));
        });
}

TextField::TextField(const QString& example, QWidget* parent)
    : Field(parent), line_(new QLineEdit) {
    QHBoxLayout* row = make_row();
    row->addWidget(line_);
    setLayout(row);
    line_->setPlaceholderText(example);
    setFocusProxy(line_);
    connect(line_, &QLineEdit::textChanged, this, &Field::changed);
}

TextField::TextField(RecipeAids& aids, WordsFor what, const QString& example, QWidget* parent)
    : TextField(example, parent) {
    complete_from_own_words(*line_, aids, what);
}

void TextField::name_it(const QString& name) {
    line_->setAccessibleName(name);
}

void TextField::show_value(const std::string& text) {
    if (value() == text) return;
    const QSignalBlocker silent(this);
    line_->setText(from_utf8(text));
}

std::string TextField::value() const {
    return to_utf8(line_->text().trimmed());
}

}  // namespace quarterturn
