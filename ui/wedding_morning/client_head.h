#pragma once

#include <QStringList>
#include <QWidget>

#include "ui/wedding_morning/board_type.h"
#include "ui/wedding_morning/board_words.h"

class QBoxLayout;
class QLabel;
class QScrollArea;
class QVBoxLayout;

namespace quarterturn {

// Who is in the chair and what to beware of, before anything else; then her looks to choose from.
class ClientHead : public QWidget {
    Q_OBJECT
  public:
    explicit ClientHead(const BoardType& type, QWidget* parent = nullptr);

    void show_client(const WeddingBoard& board, std::size_t client, std::size_t look);
    // Cautions that need more than so many pixels scroll.
    void limit_cautions(int height);

  signals:
    void look_chosen(std::size_t look);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void add_name();
    void add_cautions();
    void add_looks();
    void fit();
    bool wide() const;
    int width_of(int share) const;
    void build();

    // All that is said.
    struct Words {
        QString name;
        QString role;
        QString chair;
        QStringList cautions;
        QStringList looks;  // none where there is nothing to choose
        std::size_t look = 0;
        bool operator==(const Words&) const = default;
    };

    BoardType type_;
    Words words_;
    QVBoxLayout* column_;
    QBoxLayout* beside_ = nullptr;  // the cautions, beside her name or below it
    QList<QLabel*> said_;           // her name, her role and when she sits
    QScrollArea* cautions_ = nullptr;
    int at_most_ = 0;
};

}  // namespace quarterturn
