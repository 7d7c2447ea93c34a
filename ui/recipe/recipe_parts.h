#pragma once
// The parts of the recipe screen, each in a file of its own.

#include "ui/recipe/part_card.h"

class QLineEdit;

namespace quarterturn {

class RecipeAids;
class StepList;

class CautionsPart : public PartCard {
    Q_OBJECT
  public:
    explicit CautionsPart(RecipeAids& aids);

  protected:
    QFont line_font() const override;
};

class HairPart : public PartCard {
    Q_OBJECT
  public:
    HairPart();
};

class PrepPart : public PartCard {
    Q_OBJECT
  public:
    explicit PrepPart(RecipeAids& aids);
};

class PartingPart : public PartCard {
    Q_OBJECT
  public:
    PartingPart();

  protected:
    QWidget* make_picture(const Recipe& recipe) const override;  // what she has drawn
};

// The steps, and a line to say the next one as she says it to herself.
class BuildPart : public PartCard {
    Q_OBJECT
  public:
    explicit BuildPart(RecipeAids& aids);

    void begin_writing() override;
    bool starts_unfolded() const override { return true; }

  protected:
    // A picture in the clipboard goes to the step that the keyboard is in.
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void read_along(const QString& line);
    void add_step();

    StepList* steps_;
    QLineEdit* line_;
    QLabel* read_as_;
};

class PiecesPart : public PartCard {
    Q_OBJECT
  public:
    explicit PiecesPart(RecipeAids& aids);
};

class FinishPart : public PartCard {
    Q_OBJECT
  public:
    FinishPart();
};

class SecondLookPart : public PartCard {
    Q_OBJECT
  public:
    explicit SecondLookPart(RecipeAids& aids);
};

class FeedbackPart : public PartCard {
    Q_OBJECT
  public:
    explicit FeedbackPart(RecipeAids& aids);
};

class MinutesPart : public PartCard {
    Q_OBJECT
  public:
    MinutesPart();

    void take_note_of(const Recipe& recipe) override;

  private:
    QLabel* steps_;
};

std::vector<PartCard*> make_recipe_parts(RecipeAids& aids);  // in working order

}  // namespace quarterturn
