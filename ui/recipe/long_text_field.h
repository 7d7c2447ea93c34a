#pragma once

#include <optional>
#include <string>

#include "indexer/looks/own_words.h"
#include "ui/recipe/field.h"

class QCompleter;
class QPlainTextEdit;
class QStringListModel;

namespace quarterturn {

class RecipeAids;

// Text of any length, as tall as what stands in it. Tab goes on.
class LongTextField : public Field {
    Q_OBJECT
  public:
    explicit LongTextField(const QString& example = {}, QWidget* parent = nullptr);

    void complete_from(RecipeAids& aids, WordsFor what);
    void name_it(const QString& name) override;
    void show_value(const std::string& text);
    std::string value() const;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void fit();
    void offer(const RecipeAids& aids, WordsFor what);
    void take(const QString& words);

    QPlainTextEdit* text_;
    QCompleter* completer_ = nullptr;
    QStringListModel* offered_ = nullptr;
    bool taking_ = false;
};

}  // namespace quarterturn
