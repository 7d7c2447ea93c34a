#pragma once

#include "indexer/looks/recipe_findings.h"
#include "ui/recipe/part_card.h"
#include "ui/recipe/recipe_aids.h"
#include "ui/recipe/recipe_in_hand.h"
#include "ui/shell/screen.h"

class QLabel;
class QScrollArea;
class QStackedWidget;

namespace quarterturn {

class EmptyPage;
class LookChoice;
class SidePart;
class StartingPart;

// The recipe of a look in working order, to be written at the chair and read from where she stands.
class RecipeScreen : public Screen {
    Q_OBJECT
  public:
    explicit RecipeScreen(Session& session);

    QString help() const override;
    void refresh() override;
    void arrive(const Place& place) override;

  protected:
    void hideEvent(QHideEvent* event) override;

  private:
    void build();
    QWidget* build_page();
    QWidget* build_recipe();
    void add_keys();
    void take_look(std::optional<LookId> look);
    void show_recipe();
    void show_revision();
    void show_findings();
    Recipe written() const;
    void go_to_part(RecipePlace place);
    void go_on(int by);

    Session& session_;
    RecipeAids aids_;
    RecipeInHand in_hand_;
    std::optional<RecipeJudge> judge_;
    QStackedWidget* pages_;
    EmptyPage* empty_;
    QWidget* page_;
    QScrollArea* scroll_;
    LookChoice* looks_;
    QLabel* title_;
    QLabel* revision_;
    StartingPart* starting_;
    SidePart* side_;
    std::vector<PartCard*> parts_;
    std::optional<LookId> shown_look_;
};

}  // namespace quarterturn
