#pragma once

#include "indexer/record/recipe/build.h"
#include "ui/recipe/bound_fields.h"
#include "ui/recipe/field.h"

class QLabel;

namespace quarterturn {

class FieldForm;
class MarkedButton;
class PhotosField;
class PhotoTiles;
class RecipeAids;

// One step of the build: its words and photos to be read, and unfolded, its fields.
class StepCard : public Field {
    Q_OBJECT
  public:
    explicit StepCard(RecipeAids& aids, QWidget* parent = nullptr);

    void name_it(const QString& name) override;
    void show_number(int number);
    void show_value(const Step& step);
    Step value() const { return fields_.value(); }
    void unfold(bool unfolded);
    PhotosField& photos() { return *photos_; }

  signals:
    void wants_move(int by);
    void wants_double();
    void wants_removal();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void add_fields();
    QWidget* build_buttons();
    void show_words();
    void show_photos();

    RecipeAids& aids_;
    MarkedButton* heading_;
    PhotoTiles* strip_;
    QLabel* lost_;
    FieldForm* form_;
    PhotosField* photos_;
    QLabel* heat_;
    BoundFields<Step> fields_;
    int number_ = 1;
    bool unfolded_ = false;
};

}  // namespace quarterturn
