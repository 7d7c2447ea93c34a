#pragma once

#include <optional>
#include <string>

#include "indexer/looks/own_words.h"
#include "ui/recipe/field.h"

class QLineEdit;

namespace quarterturn {

class RecipeAids;

// Completes what she types in a line from her own earlier words.
void complete_from_own_words(QLineEdit& line, RecipeAids& aids, WordsFor what);

// A line of text; what stands before and after it is no part of it.
class TextField : public Field {
    Q_OBJECT
  public:
    explicit TextField(const QString& example = {}, QWidget* parent = nullptr);
    TextField(RecipeAids& aids, WordsFor what, const QString& example = {},
              QWidget* parent = nullptr);

    void name_it(const QString& name) override;
    void show_value(const std::string& text);
    std::string value() const;
    QLineEdit& line() { return *line_; }

  private:
    QLineEdit* line_;
};

}  // namespace quarterturn
