#pragma once

#include <QWidget>

#include "indexer/looks/look_state.h"

class QVBoxLayout;

namespace quarterturn {

class Session;

// What the recipe check says of a look, the way to the recipe, and the recipe itself.
class RecipeCheck : public QWidget {
    Q_OBJECT
  public:
    explicit RecipeCheck(Session& session, QWidget* parent = nullptr);

    void show_state(const LookState& state);

  private:
    void add_findings(const LookState& state);
    void add_way(const LookState& state);
    void add_recipe(const Recipe& recipe);

    Session& session_;
    QVBoxLayout* column_;
};

}  // namespace quarterturn
