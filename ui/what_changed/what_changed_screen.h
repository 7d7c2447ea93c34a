#pragma once

#include "indexer/looks/recipe_moments.h"
#include "ui/shell/screen.h"

class QComboBox;
class QHBoxLayout;
class QLabel;
class QStackedWidget;

namespace quarterturn {

class Comparison;
class EmptyPage;
class LookChoice;
class PhotoPairs;

// What changed between two recipes: two revisions, two trials, a trial and the wedding day, or two
// looks of the same client, with the photos of the same angle.
class WhatChangedScreen : public Screen {
    Q_OBJECT
  public:
    explicit WhatChangedScreen(Session& session);

    QString help() const override;
    void refresh() override;
    void arrive(const Place& place) override;

  private:
    QWidget* build_page();
    QWidget* build_choices();
    QComboBox* add_choice(QHBoxLayout& row, const QString& name);
    void find_moments(LookId look);
    void choose(std::optional<RecipeMoment>& side, int place);
    std::optional<RecipeMoment> still_there(const std::optional<RecipeMoment>& chosen) const;
    void show_choices();
    void show_choice(QComboBox& choice, const std::optional<RecipeMoment>& side);
    void show_comparison();
    void compare(const RecipeMoment& was, const RecipeMoment& is);

    Session& session_;
    std::optional<LookId> look_;
    std::vector<RecipeMoment> moments_;
    std::optional<RecipeMoment> was_;
    std::optional<RecipeMoment> is_;
    QStackedWidget* pages_;
    EmptyPage* empty_;
    QWidget* page_;
    LookChoice* looks_;
    QWidget* choices_;
    QComboBox* then_;
    QComboBox* now_;
    QWidget* waiting_;
    QLabel* sentence_;
    QWidget* recipes_;
    Comparison* comparison_;
    QWidget* photos_;
    PhotoPairs* pairs_;
};

}  // namespace quarterturn
