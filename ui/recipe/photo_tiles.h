#pragma once

#include <QWidget>
#include <set>
#include <vector>

#include "indexer/record/photo.h"

namespace quarterturn {

class FlowLayout;
class PhotoTile;
class Session;

// Photos, small, beside each other.
class PhotoTiles : public QWidget {
    Q_OBJECT
  public:
    explicit PhotoTiles(Session& session, QWidget* parent = nullptr);

    // `chosen`: checksums of those that are marked.
    void show_photos(const std::vector<Photo>& photos, const std::set<std::string>& chosen = {});

  signals:
    void clicked(quarterturn::PhotoId photo);

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void build(const std::vector<Photo>& photos);
    void want_pictures();
    void show_picture(PhotoTile& tile);

    Session& session_;
    FlowLayout* flow_;
    std::vector<Photo> photos_;
    std::vector<PhotoTile*> tiles_;
};

}  // namespace quarterturn
