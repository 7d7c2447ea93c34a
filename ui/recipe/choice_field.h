#pragma once

#include <optional>

#include "ui/recipe/field.h"
#include "ui/recipe/shown_recipe_words.h"

class QComboBox;

namespace quarterturn {

// One of a few words, or nothing said. The wheel scrolls the page.
class ChoiceField : public Field {
    Q_OBJECT
  public:
    explicit ChoiceField(QWidget* parent = nullptr);

    void name_it(const QString& name) override;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void add_choice(const QString& words, int number);
    void choose(int number);
    int chosen() const;

  private:
    QComboBox* box_;
};

// The words of an enumeration. Without a word for nothing, there is always one.
template <class Word>
class WordChoice : public ChoiceField {
  public:
    WordChoice(std::initializer_list<Word> words, const QString& nothing) {
        if (!nothing.isEmpty()) add_choice(nothing, -1);
        for (const Word word : words) add_choice(shown(word), static_cast<int>(word));
    }

    void show_value(std::optional<Word> word) { choose(word ? static_cast<int>(*word) : -1); }
    std::optional<Word> value() const {
        const int number = chosen();
        return number < 0 ? std::nullopt : std::optional(static_cast<Word>(number));
    }
};

}  // namespace quarterturn
