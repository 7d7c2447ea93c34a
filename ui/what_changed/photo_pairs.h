#pragma once

#include <QWidget>
#include <vector>

#include "indexer/looks/recipe_moments.h"

class QHBoxLayout;

namespace quarterturn {

class FlowLayout;
class PhotoTile;
class Session;

// The photos of the same angle from both sides, in pairs: the earlier one first.
class PhotoPairs : public QWidget {
    Q_OBJECT
  public:
    explicit PhotoPairs(Session& session, QWidget* parent = nullptr);

    void show_pairs(const std::vector<AnglePair>& pairs);

  private:
    void add_pair(const AnglePair& pair);
    void add_photo(QHBoxLayout& row, const std::optional<Photo>& photo, const QString& side,
                   Angle angle);
    void show_picture(PhotoTile& tile);

    Session& session_;
    FlowLayout* flow_;
    std::vector<PhotoTile*> tiles_;
};

}  // namespace quarterturn
