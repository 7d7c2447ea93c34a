#pragma once

#include <QWidget>

#include "indexer/looks/recipe_findings.h"
#include "ui/recipe/recipe_place.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace quarterturn {

class MarkedButton;
class RecipeInHand;

// Beside the recipe: how far it is kept, the button that saves it, and its parts with what the
// recipe check finds in each. A click goes there.
class SidePart : public QWidget {
    Q_OBJECT
  public:
    explicit SidePart(RecipeInHand& in_hand, QWidget* parent = nullptr);

    void show_kept();
    void show_findings(const Recipe& recipe, const std::vector<RecipeFinding>& findings);

  signals:
    void asked_for(quarterturn::RecipePlace place);

  private:
    void build_places(const std::vector<RecipeFinding>& findings);
    void add_finding(const RecipeFinding& finding, std::optional<RecipePlace> place);

    RecipeInHand& in_hand_;
    QPushButton* save_;
    QLabel* kept_;
    QPushButton* back_;
    QLabel* verdict_;
    QVBoxLayout* places_;
    std::vector<MarkedButton*> place_buttons_;
    std::optional<std::vector<RecipeFinding>> shown_;
};

}  // namespace quarterturn
