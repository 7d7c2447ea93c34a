#pragma once

#include <QFrame>

#include "ui/recipe/bound_fields.h"
#include "ui/recipe/field_form.h"
#include "ui/recipe/recipe_place.h"

class QLabel;
class QVBoxLayout;

namespace quarterturn {

class MarkedButton;

// One part of the recipe: what it says, to be read from where she stands, or unfolded, its fields.
// Where nothing is said it is one line. Escape folds it.
class PartCard : public QFrame {
    Q_OBJECT
  public:
    RecipePlace place() const { return place_; }

    void show_recipe(const Recipe& recipe);
    void read_into(Recipe& recipe) const { fields_.read_into(recipe); }
    // Something changed in this or another part.
    virtual void take_note_of(const Recipe& recipe) { (void)recipe; }

    void unfold(bool unfolded);
    virtual void begin_writing();  // unfolds, with the keyboard in the first field
    virtual bool starts_unfolded() const { return false; }

  signals:
    void changed();
    void took_out(const QString& said);

  protected:
    explicit PartCard(RecipePlace place);

    virtual QFont line_font() const;

    template <class OneField, class Member>
    OneField* add(const QString& word, OneField* field, Member member) {
        form_->add(word, *field);
        return fields_.tie(field, member);
    }
    // A field with a column of its own, across the card.
    template <class OneField, class Member>
    OneField* add_wide(OneField* field, Member member) {
        add_watched(*field);
        return fields_.tie(field, member);
    }
    void add_words(const QString& words);  // a quiet sentence below the fields so far
    void add_below(QWidget& widget);
    FieldForm& form() { return *form_; }

    // Stands below the words while it is folded; null for none.
    virtual QWidget* make_picture(const Recipe& recipe) const {
        (void)recipe;
        return nullptr;
    }

    void keyPressEvent(QKeyEvent* event) override;

  private:
    void add_watched(Field& field);
    void show_lines();

    RecipePlace place_;
    MarkedButton* heading_;
    QLabel* nothing_;
    QWidget* reading_;
    QVBoxLayout* lines_;
    FieldForm* form_;
    BoundFields<Recipe> fields_;
    bool unfolded_ = false;
};

}  // namespace quarterturn
