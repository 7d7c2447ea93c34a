#pragma once

#include <QWidget>
#include <vector>

#include "indexer/intake/day_photos.h"
#include "indexer/looks/as_made.h"

class QComboBox;
class QPushButton;
class QVBoxLayout;

namespace quarterturn {

class PhotoTile;
class Session;

// Photos of the day that wait for their place: whose each is and from which angle, as proposed, for
// her to confirm with one click or to correct.
class DayPhotosPanel : public QWidget {
    Q_OBJECT
  public:
    explicit DayPhotosPanel(Session& session, QWidget* parent = nullptr);

    void show_proposals(const WeddingAsMade& made, const std::vector<DayProposal>& proposals);
    std::vector<DayProposal> confirmed() const;  // as corrected

  signals:
    void kept();
    void left();

  private:
    struct Row {
        PhotoTile* tile;
        QComboBox* look;
        QComboBox* angle;
    };

    void add_row(const WeddingAsMade& made, const DayProposal& proposal);
    QComboBox* look_choice(const WeddingAsMade& made, const DayProposal& proposal) const;
    QComboBox* angle_choice(const DayProposal& proposal) const;
    void show_pictures();

    Session& session_;
    std::vector<DayProposal> proposals_;
    std::vector<Row> rows_;
    QVBoxLayout* list_;
    QPushButton* keep_;
};

}  // namespace quarterturn
